import type { getRetirementsOutput } from '@halfshaft/contract';
import type { z } from 'zod';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { AlongSheet } from './along-sheet';
import { CarTable } from './car-table';
import { carsInWords } from './figures-in-words';
import { RateTable } from './rate-table';

type Saved = NonNullable<z.infer<typeof getRetirementsOutput>['saved']>;

/** What the saved list of one event tells. */
export function EventReport({ saved: { field, figures, parts, records } }: { saved: Saved }) {
  const { leftOut } = field;
  return (
    <>
      {leftOut.length > 0 ? (
        <Notice kind="warning">
          Since the list was saved the itinerary has changed: it has no more what is written for{' '}
          {leftOut.length === 1 ? 'car' : 'cars'} {leftOut.join(', ')}. They are in none of the figures. Mend
          their rows and save again.
        </Notice>
      ) : null}
      {field.cars.notKnown > 0 ? (
        <Notice>
          The end of {field.cars.notKnown === 1 ? '1 car' : `${field.cars.notKnown} cars`} is not known yet.
          Their km count only up to where the list says they were seen last, and not at all where it says
          nothing, so the figures may be too high.
        </Notice>
      ) : null}
      <Sheet title="What became of the cars">
        <p>{carsInWords(field.cars).join(' ')}</p>
      </Sheet>
      <RateTable figures={figures} parts={parts} />
      <AlongSheet along={figures.along} />
      <CarTable records={records} />
    </>
  );
}
