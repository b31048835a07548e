'use client';

import type { ItineraryProblem } from '@halfshaft/itinerary';
import { useRef } from 'react';
import type { UseFormReturn } from 'react-hook-form';
import { Button } from '@/components/button';
import { TextArea } from '@/components/text-area';
import { rowRange } from '../itinerary/row-range';
import { EXAMPLE_EVENT_NAME, EXAMPLE_ITINERARY } from './example-itinerary';
import { ItineraryProblems } from './itinerary-problems';
import type { VisitForm } from './visit-form';

export interface ItineraryBoxProps {
  form: UseFormReturn<VisitForm>;
  source: string;
  error: string | undefined;
  problems: readonly ItineraryProblem[];
}

const HINT =
  'Copy the whole table from a spreadsheet or the event’s page, headings included: TC/SS, Location, SS km, Road km, First car due.';

/** Where the itinerary is pasted, with what is wrong in it below. */
export function ItineraryBox({ form, source, error, problems }: ItineraryBoxProps) {
  const box = useRef<HTMLTextAreaElement | null>(null);
  const { ref, ...field } = form.register('source');

  function showRow(row: number) {
    if (box.current) selectRow(box.current, row);
  }

  function fillInExample() {
    form.setValue('source', EXAMPLE_ITINERARY, { shouldDirty: true });
    form.setValue('eventName', EXAMPLE_EVENT_NAME, { shouldDirty: true });
    // The button goes away, so the keyboard needs another place; the table shows from its top.
    if (box.current) selectRow(box.current, 1);
  }

  return (
    <>
      <TextArea
        label="Paste the itinerary"
        hint={HINT}
        error={error}
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
      {source.trim() === '' ? (
        <div>
          <Button onClick={fillInExample}>Use an example</Button>
        </div>
      ) : null}
      <ItineraryProblems problems={problems} onRow={showRow} />
    </>
  );
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
