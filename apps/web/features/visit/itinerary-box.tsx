'use client';

import { useRef } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { Button } from '@/components/button';
import { SelectField } from '@/components/select-field';
import { TextArea } from '@/components/text-area';
import { TextField } from '@/components/text-field';
import { leftInWords, leftToMend } from '../itinerary/cells-to-mend';
import { MendPanel } from '../itinerary/mend-panel';
import { QUICK_TIMING } from '../itinerary/quick-draft';
import { QuickForm } from '../itinerary/quick-form';
import { rowRange } from '../itinerary/row-range';
import { browserZone, browserZones, zoneOptions } from '../itinerary/time-zones';
import { useMending } from '../itinerary/use-mending';
import { EXAMPLE_EVENT_NAME, EXAMPLE_ITINERARY } from './example-itinerary';
import type { VisitReading } from './use-sheet';
import { readVisit, VISIT_KEY, type VisitForm } from './visit-form';

export interface ItineraryBoxProps {
  form: UseFormReturn<VisitForm>;
  values: VisitForm;
  reading: VisitReading;
}

const HINT =
  'Copy the whole table as it is, headings included: from a spreadsheet, the event’s page or a PDF.';

/** Where the itinerary is pasted, with the table as it was understood below. */
export function ItineraryBox({ form, values, reading }: ItineraryBoxProps) {
  const box = useRef<HTMLTextAreaElement | null>(null);
  const { ref, ...field } = form.register('source');
  const isEmpty = values.source.trim() === '';
  const mending = useMending({ source: values.source, read: readNow, write: writeSource });

  function readNow() {
    const read = readVisit(form.getValues());
    return read.ok ? read.visit.itinerary : null;
  }

  function writeSource(source: string) {
    form.setValue('source', source, { shouldDirty: true });
  }

  function writeQuickForm(source: string) {
    form.setValue('roadTimedFrom', QUICK_TIMING.roadTimedFrom, { shouldDirty: true });
    form.setValue('printedFor', QUICK_TIMING.printedFor, { shouldDirty: true });
    writeSource(source);
  }

  function showRow(row: number) {
    if (box.current) selectRow(box.current, row);
  }

  function fillInExample() {
    writeSource(EXAMPLE_ITINERARY);
    form.setValue('eventName', EXAMPLE_EVENT_NAME, { shouldDirty: true });
    // The button goes away, so the keyboard needs another place; the table shows from its top.
    if (box.current) selectRow(box.current, 1);
  }

  return (
    <>
      <TextArea
        label="Paste the itinerary"
        hint={HINT}
        error={reading.fields.source}
        keepLines
        rows={10}
        spellCheck={false}
        autoCapitalize="off"
        autoComplete="off"
        {...field}
        ref={(element) => {
          ref(element);
          box.current = element;
        }}
      />
      {isEmpty ? (
        <div>
          <Button onClick={fillInExample}>Use an example</Button>
        </div>
      ) : null}
      <QuickForm keptAs={VISIT_KEY} isEmpty={isEmpty} readSettings={readNow} onWrite={writeQuickForm}>
        <DayAndZone form={form} values={values} reading={reading} />
      </QuickForm>
      <MendPanel
        words={wordsOf(reading, isEmpty)}
        problems={reading.problems}
        table={reading.table}
        mending={mending}
        onGoToRow={showRow}
      />
    </>
  );
}

/** The same two as under “More”, where they are wanted before anything is pasted. */
function DayAndZone({ form, values, reading }: ItineraryBoxProps) {
  return (
    <>
      <TextField
        label="First day of the event"
        type="date"
        error={reading.fields.startsOn}
        value={values.startsOn}
        onChange={(event) => form.setValue('startsOn', event.target.value, { shouldDirty: true })}
      />
      <SelectField
        label="Time zone it is in"
        options={zoneOptions(browserZones(), [values.timeZone, browserZone()])}
        error={reading.fields.timeZone}
        value={values.timeZone}
        onChange={(event) => form.setValue('timeZone', event.target.value, { shouldDirty: true })}
      />
    </>
  );
}

function wordsOf({ problems, table }: VisitReading, isEmpty: boolean): string {
  if (leftToMend(problems) > 0) return `${leftInWords(problems)}.`;
  if (isEmpty || table === null) return '';
  const remarks = leftInWords(problems);
  return remarks === '' ? 'Nothing left to mend.' : `Nothing left to mend, ${remarks}.`;
}

function selectRow(box: HTMLTextAreaElement, row: number): void {
  const { start, end, line } = rowRange(box.value, row);
  box.focus();
  box.setSelectionRange(start, end);
  // Browsers do not agree on scrolling to a selection that a script has made.
  const lineHeight = Number.parseFloat(getComputedStyle(box).lineHeight);
  box.scrollTop = Math.max(0, (line - 1) * lineHeight);
  box.scrollLeft = 0;
}
