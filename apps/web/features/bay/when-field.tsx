import type { ServiceId, StageId } from '@halfshaft/itinerary';
import type { FactPlace } from '@halfshaft/worklog';
import { SelectField } from '@/components/select-field';

interface WhenFieldProps {
  /** The likeliest first. */
  stages: readonly StageId[];
  /** As the screen names the service. */
  serviceName: string;
  /** A stage, or empty for at the service. */
  stageId: StageId | '';
  onChoose: (stageId: StageId | '') => void;
}

/** On which stage, or the road after it, something was so; or here, at the service. */
export function WhenField({ stages, serviceName, stageId, onChoose }: WhenFieldProps) {
  return (
    <SelectField
      label="When?"
      options={[
        ...stages.map((id) => ({ value: id, label: `On or after ${id}` })),
        { value: '', label: `Here, at ${serviceName}` },
      ]}
      value={stageId}
      onChange={(event) => onChoose(event.target.value)}
    />
  );
}

/** What was chosen as a place on the event. */
export function factPlaceOf(stageId: StageId | '', serviceId: ServiceId): FactPlace {
  return stageId === '' ? { kind: 'service', serviceId } : { kind: 'road', afterStageId: stageId };
}
