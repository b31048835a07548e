'use client';

import type { CarRow } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { LinkButton } from '@/components/link-button';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { cardTableAddress } from '../events/addresses';
import { ExportCards } from './export-cards';

export interface CardsAsTableProps {
  teamId: string;
  car: CarRow;
  mayManage: boolean;
}

/** Below the cards: out to a spreadsheet and in again. */
export function CardsAsTable({ teamId, car, mayManage }: CardsAsTableProps) {
  const cards = useQuery(api.card.list.queryOptions({ teamId, carId: car.carId }));
  const some = cards.data && cards.data.length > 0 ? cards.data : null;
  if (cards.data === undefined || (some === null && !mayManage)) return null;
  return (
    <Sheet title="Cards in a spreadsheet">
      <p>
        {mayManage
          ? 'Change many cards at once, or give them to another car: download them, change the table, bring it in again.'
          : 'All cards of this car as one table (CSV).'}
      </p>
      <Stack across>
        {some ? <ExportCards car={car} cards={some} /> : null}
        {mayManage ? (
          <LinkButton href={cardTableAddress(teamId, car.carId)}>Bring in a table</LinkButton>
        ) : null}
      </Stack>
    </Sheet>
  );
}
