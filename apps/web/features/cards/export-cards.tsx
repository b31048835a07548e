'use client';

import type { CarRow } from '@halfshaft/contract';
import { cardsToTable, type JobCard } from '@halfshaft/lifing';
import { Button } from '@/components/button';
import { saveTable } from '@/lib/save-file';

export function ExportCards({ car, cards }: { car: CarRow; cards: readonly JobCard[] }) {
  return (
    <Button onClick={() => saveTable(`${car.name} cards`, cardsToTable(cards))}>Download the cards</Button>
  );
}
