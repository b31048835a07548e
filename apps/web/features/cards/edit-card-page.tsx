'use client';

import type { CarRow } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { carAddress } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { useTeam } from '../events/use-team';
import { CardEditor } from './card-editor';
import { CopyCard } from './copy-card';
import { RemoveCard } from './remove-card';

export interface EditCardPageProps {
  teamId: string;
  car: CarRow;
  /** Null for a new card. */
  cardId: string | null;
}

export function EditCardPage({ teamId, car, cardId }: EditCardPageProps) {
  const team = useTeam(teamId);
  const cards = useQuery(api.card.list.queryOptions({ teamId, carId: car.carId }));
  const back = <LinkButton href={carAddress(teamId, car.carId)}>Back to the cards</LinkButton>;
  if (cards.isPending) return <LoadingState wholePage words="Fetching the card …" />;
  if (cards.data === undefined) {
    return <LoadTrouble wholePage error={cards.error} onTryAgain={() => cards.refetch()} />;
  }
  const card = cards.data.find((one) => one.id === cardId) ?? null;
  if (cardId !== null && card === null) {
    return (
      <EmptyState title="That card is not here" action={back}>
        It was removed, or it belongs to another car.
      </EmptyState>
    );
  }
  return (
    <>
      <PageHeader title={card?.name ?? 'New card'} above={car.name} actions={back} />
      {team?.mayManage === false ? (
        <EmptyState title="Cards are for managers">
          A manager of the team writes and changes them. You see them at each service.
        </EmptyState>
      ) : (
        <CardSheet teamId={teamId} car={car} card={card} />
      )}
    </>
  );
}

function CardSheet({ teamId, car, card }: { teamId: string; car: CarRow; card: JobCard | null }) {
  const { carId } = car;
  const router = useRouter();
  const queries = useQueryClient();

  async function goBack() {
    // Events carry the cards of their cars, so they are out of date as well.
    await Promise.all([
      queries.invalidateQueries({ queryKey: api.card.list.queryKey({ teamId, carId }) }),
      queries.invalidateQueries(api.event.get.pathFilter()),
    ]);
    router.push(carAddress(teamId, carId));
  }

  return (
    <Sheet>
      <CardEditor teamId={teamId} carId={carId} card={card} onSaved={goBack} />
      {card ? (
        <Stack across>
          <CopyCard teamId={teamId} car={car} card={card} />
          <RemoveCard teamId={teamId} card={card} onRemoved={goBack} />
        </Stack>
      ) : null}
    </Sheet>
  );
}
