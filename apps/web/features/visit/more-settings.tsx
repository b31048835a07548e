import type { UseFormReturn } from 'react-hook-form';
import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import { PRINTED_FOR_CHOICES } from '../itinerary/printed-for-choices';
import { browserZone, browserZones, zoneOptions } from '../itinerary/time-zones';
import { StartPositions } from './start-positions';
import type { VisitReading } from './use-sheet';
import type { VisitForm } from './visit-form';

export interface MoreSettingsProps {
  form: UseFormReturn<VisitForm>;
  values: VisitForm;
  reading: VisitReading;
}

const TIMED_FROM = [
  { value: 'stageStart', label: 'Stage start', hint: 'The usual way' },
  { value: 'stageFinish', label: 'Stage finish' },
];

/** What seldom differs: it stands folded away with the usual values in it. */
export function MoreSettings({ form, values, reading }: MoreSettingsProps) {
  const { fields: problems } = reading;
  const { register } = form;
  return (
    <Disclosure summary="More: start position, first day, time zone, how the times are meant">
      <StartPositions form={form} values={values} reading={reading} />
      <TextField
        label="Name of the event"
        optional
        hint="Stands at the head of the sheet."
        autoComplete="off"
        maxLength={100}
        {...register('eventName')}
      />
      <TextField
        label="First day"
        type="date"
        hint="Where the table has dates of its own, they count."
        error={problems.startsOn}
        {...register('startsOn')}
      />
      <SelectField
        label="Time zone of the event"
        options={zoneOptions(browserZones(), [values.timeZone, browserZone()])}
        error={problems.timeZone}
        {...register('timeZone')}
      />
      <ChoiceGroup
        label="The road after a stage is timed from"
        choices={TIMED_FROM}
        across
        error={problems.roadTimedFrom}
        {...register('roadTimedFrom')}
      />
      <ChoiceGroup
        label="The printed times are for"
        choices={PRINTED_FOR_CHOICES}
        error={problems.printedFor}
        {...register('printedFor')}
      />
      <NumberField
        label="Cars start every"
        unit="seconds"
        whole
        error={problems.startIntervalSeconds}
        {...register('startIntervalSeconds')}
      />
      <NumberField
        label="From time control to stage start"
        unit="minutes"
        whole
        hint="For stages whose row does not say it."
        error={problems.gapMinutes}
        {...register('gapMinutes')}
      />
    </Disclosure>
  );
}
