import type { ControlRole, Itinerary } from '@halfshaft/itinerary';
import type { UseFormReturn } from 'react-hook-form';
import { type Choice, ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { earlyChoices } from './early-roles';
import { type PenaltyForm, RESETS } from './penalty-form';
import { RESET_NAMES } from './rules-in-words';

const TIMING: Choice[] = [
  { value: 'target', label: 'From the actual time before', hint: 'plus the target time' },
  { value: 'scheduled', label: 'By the timetable', hint: 'plus what the car is behind it' },
];
const SERVICE_OUT: Choice[] = [
  { value: 'fullTime', label: 'Late in, late out' },
  { value: 'asPlanned', label: 'The printed out-time stays' },
];
const OVER: Choice[] = [
  { value: 'outOfTime', label: 'Out of time' },
  { value: 'fixedPenalty', label: 'A fixed penalty' },
];
const FURTHER_CHOICES: Choice[] = [
  { value: 'serviceTimeMayBeGivenUp', label: 'A late car may leave service early' },
  { value: 'heldMinutesCount', label: 'Minutes the event held the car count to the limits' },
];
const NO_LIMIT = 'Left empty there is no such limit.';

interface PenaltyFieldsProps {
  form: UseFormReturn<PenaltyForm>;
  itinerary: Itinerary;
  /** Kinds of control offered also where the itinerary has none: what was saved, or filled in. */
  offered: readonly ControlRole[];
}

/** The figures of the event's penalties: what is changed most stands first. */
export function PenaltyFields({ form, itinerary, offered }: PenaltyFieldsProps) {
  const { register, formState, watch } = form;
  const figure = (name: keyof PenaltyForm) => ({
    whole: true,
    error: formState.errors[name]?.message,
    ...register(name),
  });
  return (
    <>
      <NumberField label="Late, a minute" unit="s" {...figure('lateSecondsPerMinute')} />
      <NumberField label="Early, a minute" unit="s" {...figure('earlySecondsPerMinute')} />
      <NumberField
        label="Most lateness at one control"
        unit="min"
        hint={NO_LIMIT}
        optional
        {...figure('maxLateMinutesAtControl')}
      />
      <NumberField
        label="Most lateness in one section"
        unit="min"
        optional
        {...figure('maxLateMinutesInSection')}
      />
      <NumberField
        label="Most lateness in all"
        hint="Since the last reset."
        unit="min"
        optional
        {...figure('maxLateMinutesInTotal')}
      />
      <ChoiceGroup label="Over a limit" across choices={OVER} {...register('overMeans')} />
      {watch('overMeans') === 'fixedPenalty' ? (
        <NumberField label="The fixed penalty" unit="s" {...figure('overSeconds')} />
      ) : null}
      <ChoiceGroup
        label="Lateness resets at"
        pick="many"
        across
        choices={RESETS.map((value) => ({ value, label: RESET_NAMES[value] }))}
        {...register('resetsAt')}
      />
      <ChoiceGroup label="Out of service" across choices={SERVICE_OUT} {...register('serviceOut')} />
      <Disclosure summary="More">
        <Stack>
          <ChoiceGroup label="When a car is due" choices={TIMING} {...register('timing')} />
          <ChoiceGroup
            label="Early is allowed, without penalty"
            hint="The kinds of control this itinerary has. Most events allow it at the finish only."
            pick="many"
            choices={earlyChoices(itinerary, offered)}
            error={formState.errors.earlyAllowedAt?.message}
            {...register('earlyAllowedAt')}
          />
          <ChoiceGroup label="Further" pick="many" choices={FURTHER_CHOICES} {...register('further')} />
          <NumberField
            label="Most earliness in all"
            unit="min"
            optional
            {...figure('maxEarlyMinutesInTotal')}
          />
          <NumberField
            label="Leaving a main control late or early, a minute"
            unit="s"
            optional
            {...figure('mainControlOutSecondsPerMinute')}
          />
          <TextField
            label="Main controls"
            hint="Their printed names, with commas. Left empty: those printed as MTC or MC."
            optional
            error={formState.errors.mainControls?.message}
            {...register('mainControls')}
          />
          <NumberField
            label="Time may be made up down to"
            hint="A share of the target time. Left empty: it may not be made up."
            unit="%"
            optional
            error={formState.errors.makeUpPercent?.message}
            {...register('makeUpPercent')}
          />
          <NumberField
            label="The zone may be entered before the due minute by"
            unit="s"
            {...figure('earlyEntrySeconds')}
          />
        </Stack>
      </Disclosure>
    </>
  );
}
