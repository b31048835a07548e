'use client';

import type { CarRow } from '@halfshaft/contract';
import { useQuery, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { carAddress } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { useTeam } from '../events/use-team';
import { ImportCards } from './import-cards';

/** A table of cards, brought in to one car. */
export function ImportCardsPage({ teamId, car }: { teamId: string; car: CarRow }) {
  const { carId } = car;
  const team = useTeam(teamId);
  const router = useRouter();
  const queries = useQueryClient();
  const cards = useQuery(api.card.list.queryOptions({ teamId, carId }));
  const back = <LinkButton href={carAddress(teamId, carId)}>Back to the cards</LinkButton>;
  if (cards.isPending) return <LoadingState wholePage words="Fetching the cards …" />;
  if (cards.data === undefined) {
    return <LoadTrouble wholePage error={cards.error} onTryAgain={() => cards.refetch()} />;
  }

  async function goBack() {
    // Events carry the cards of their cars, so they are out of date as well.
    await Promise.all([
      queries.invalidateQueries({ queryKey: api.card.list.queryKey({ teamId, carId }) }),
      queries.invalidateQueries(api.event.get.pathFilter()),
    ]);
    router.push(carAddress(teamId, carId));
  }

  return (
    <>
      <PageHeader title="Bring in a table of cards" above={car.name} actions={back} />
      {team?.mayManage === false ? (
        <EmptyState title="Cards are for managers">
          A manager of the team writes and changes them. You see them at each service.
        </EmptyState>
      ) : (
        <ImportCards teamId={teamId} car={car} before={cards.data} onSaved={goBack} />
      )}
    </>
  );
}
