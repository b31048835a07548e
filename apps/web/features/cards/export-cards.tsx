'use client';

import type { CarRow } from '@halfshaft/contract';
import { cardsToTable, type JobCard } from '@halfshaft/lifing';
import { Button } from '@/components/button';
import { saveFile } from '@/lib/save-file';

/** Without it some spreadsheets take the letters for those of another alphabet. */
const BYTE_ORDER_MARK = '\uFEFF';

export function ExportCards({ car, cards }: { car: CarRow; cards: readonly JobCard[] }) {
  return (
    <Button
      onClick={() =>
        saveFile(`${car.name} cards.csv`, 'text/csv;charset=utf-8', BYTE_ORDER_MARK + cardsToTable(cards))
      }
    >
      Download the cards
    </Button>
  );
}
