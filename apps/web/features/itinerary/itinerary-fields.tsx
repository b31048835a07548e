import { type ReactNode, type Ref, useMemo } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { TextArea } from '@/components/text-area';
import { TextField } from '@/components/text-field';
import { EXAMPLE_TABLE } from './example-table';
import type { ItineraryForm } from './itinerary-form';
import { PRINTED_FOR_CHOICES } from './printed-for-choices';
import { browserZone, browserZones, zoneOptions } from './time-zones';

const TIMED_CHOICES = [
  { value: 'stageStart', label: 'From the start of the stage', hint: 'Target times hold stage and road.' },
  { value: 'stageFinish', label: 'From the finish of the stage', hint: 'Target times hold the road only.' },
];

export interface ItineraryFieldsProps {
  form: UseFormReturn<ItineraryForm>;
  /** False where the name is settled already. */
  withName: boolean;
  boxRef: Ref<HTMLTextAreaElement>;
  /** Below the box: the second way to fill it. */
  children?: ReactNode;
}

export function ItineraryFields({ form, withName, boxRef, children }: ItineraryFieldsProps) {
  const { register, formState, setValue, watch } = form;
  const errors = formState.errors.itinerary;
  const { ref: registerBox, ...box } = register('itinerary.source');
  return (
    <>
      {withName ? (
        <TextField
          label="Name of the event"
          autoComplete="off"
          error={formState.errors.name?.message}
          {...register('name')}
        />
      ) : null}
      <TextArea
        label="Itinerary"
        hint="Paste the whole table as it is, headings included: from a spreadsheet, a page or a PDF."
        rows={16}
        keepLines
        spellCheck={false}
        autoComplete="off"
        error={errors?.source?.message}
        {...box}
        ref={(element) => {
          registerBox(element);
          if (typeof boxRef === 'function') boxRef(element);
          else if (boxRef) boxRef.current = element;
        }}
      />
      {watch('itinerary.source').trim() === '' ? (
        <Stack across>
          <Button
            look="quiet"
            onClick={() => setValue('itinerary.source', EXAMPLE_TABLE, { shouldDirty: true })}
          >
            Fill in an example
          </Button>
        </Stack>
      ) : null}
      {children}
      <TextField
        label="First day"
        type="date"
        error={errors?.startsOn?.message}
        {...register('itinerary.startsOn')}
      />
      <ZoneField form={form} />
      <MoreSettings form={form} />
    </>
  );
}

function ZoneField({ form }: { form: UseFormReturn<ItineraryForm> }) {
  const saved = form.formState.defaultValues?.itinerary?.timeZone ?? '';
  // Some four hundred names: put in order once, not at each letter typed.
  const options = useMemo(() => zoneOptions(browserZones(), [browserZone(), saved]), [saved]);
  return (
    <SelectField
      label="Time zone of the event"
      options={options}
      error={form.formState.errors.itinerary?.timeZone?.message}
      {...form.register('itinerary.timeZone')}
    />
  );
}

function MoreSettings({ form }: { form: UseFormReturn<ItineraryForm> }) {
  const { register, formState } = form;
  const errors = formState.errors.itinerary;
  return (
    <Disclosure summary="More: how the times are meant">
      <Stack>
        <ChoiceGroup
          label="The road after a stage is timed"
          choices={TIMED_CHOICES}
          {...register('itinerary.roadTimedFrom')}
        />
        <ChoiceGroup
          label="The printed times are for"
          choices={PRINTED_FOR_CHOICES}
          {...register('itinerary.printedFor')}
        />
        <NumberField
          label="Between two cars"
          hint="Where the table prints no interval of its own."
          unit="s"
          whole
          error={errors?.startIntervalSeconds?.message}
          {...register('itinerary.startIntervalSeconds')}
        />
        <NumberField
          label="From time control to stage start"
          hint="Where the table prints neither a gap nor both times."
          unit="s"
          whole
          error={errors?.defaultGapSeconds?.message}
          {...register('itinerary.defaultGapSeconds')}
        />
      </Stack>
    </Disclosure>
  );
}
