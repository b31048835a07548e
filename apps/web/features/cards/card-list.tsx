'use client';

import type { JobCard } from '@halfshaft/lifing';
import { useQuery } from '@tanstack/react-query';
import { EmptyState } from '@/components/empty-state';
import { LoadingState } from '@/components/loading-state';
import { Table, type TableColumn } from '@/components/table';
import { api } from '@/lib/api';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { cardAddress } from '../events/addresses';
import { RowLink } from '../events/row-link';
import { LoadTrouble } from '../events/trouble';
import { dueInWords, workInWords } from './card-words';
import { groupCards } from './group-cards';

export interface CardListProps {
  teamId: string;
  carId: string;
  /** Then each card's name leads to its form. */
  mayManage: boolean;
}

export function CardList({ teamId, carId, mayManage }: CardListProps) {
  const cards = useQuery(api.card.list.queryOptions({ teamId, carId }));
  if (cards.isPending) return <LoadingState words="Fetching the cards …" />;
  if (cards.data === undefined) {
    return <LoadTrouble error={cards.error} onTryAgain={() => cards.refetch()} />;
  }
  if (cards.data.length === 0) {
    return (
      <EmptyState title="No card yet">
        A card says what is done to the car, where, how often, and how long it takes.
      </EmptyState>
    );
  }
  const columns: TableColumn<JobCard>[] = [
    {
      key: 'name',
      heading: 'Card',
      leads: true,
      cell: (card) =>
        mayManage ? <RowLink href={cardAddress(teamId, carId, card.id)}>{card.name}</RowLink> : card.name,
    },
    { key: 'place', heading: 'Where', cell: (card) => CAR_PLACE_NAMES[card.place] },
    { key: 'due', heading: 'How often', cell: dueInWords },
    { key: 'work', heading: 'Time', cell: workInWords },
  ];
  return groupCards(cards.data).map((group) => (
    <Table
      key={group.title}
      caption={group.title}
      columns={columns}
      rows={group.cards}
      rowKey={(card) => card.id}
    />
  ));
}
