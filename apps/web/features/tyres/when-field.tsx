import type { FactPlace } from '@halfshaft/worklog';
import { SelectField } from '@/components/select-field';
import { stagesBefore } from '../bay/stages-before';
import type { Visit } from '../service/visit';
import { serviceNameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';

interface WhenFieldProps {
  work: LoadedWork;
  visit: Visit;
  at: FactPlace;
  onChange: (at: FactPlace) => void;
}

/** Where on the event it was: here, on the road after a stage, or before the first one. */
export function WhenField({ work, visit, at, onChange }: WhenFieldProps) {
  const { id } = visit.service;
  const stages = stagesBefore(work.replica, work.state, visit).reverse();
  const options = [
    { value: `service ${id}`, label: `Here, at ${serviceNameOf(work.replica, id)}` },
    ...stages.map(({ stage }) => ({ value: `road ${stage.id}`, label: `On the road after ${stage.id}` })),
    { value: 'road ', label: 'Before the first stage' },
  ];
  const value = at.kind === 'service' ? `service ${at.serviceId}` : `road ${at.afterStageId ?? ''}`;
  return (
    <SelectField
      label="When?"
      options={options}
      value={value}
      onChange={(event) => onChange(toPlace(event.target.value))}
    />
  );
}

function toPlace(value: string): FactPlace {
  const [kind, ...rest] = value.split(' ');
  const id = rest.join(' ');
  if (kind === 'service') return { kind: 'service', serviceId: id };
  return { kind: 'road', afterStageId: id === '' ? null : id };
}
