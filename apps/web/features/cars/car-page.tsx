'use client';

import type { CarRow } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { useSearchParams } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { CardList } from '../cards/card-list';
import { CardsAsTable } from '../cards/cards-as-table';
import { EditCardPage } from '../cards/edit-card-page';
import { ImportCardsPage } from '../cards/import-cards-page';
import { cardAddress, carsAddress, reliabilityAddress } from '../events/addresses';
import { TeamPage } from '../events/team-page';
import { BadAddress, LoadTrouble } from '../events/trouble';
import { useQueryId } from '../events/use-query-id';
import { useTeam } from '../events/use-team';
import { DRIVE_WORDS, SURFACE_WORDS } from './car-words';
import { EditCar } from './edit-car';

/** One car with its cards; with `card` in the address, that card's form, or the table to bring in, in place of the list. */
export function CarPage() {
  const carId = useQueryId('car');
  return (
    <TeamPage>
      {(teamId) => (carId === null ? <BadAddress /> : <CarOfTeam teamId={teamId} carId={carId} />)}
    </TeamPage>
  );
}

function CarOfTeam({ teamId, carId }: { teamId: string; carId: string }) {
  const card = useSearchParams().get('card');
  const cars = useQuery(api.car.list.queryOptions({ teamId }));
  if (cars.isPending) return <LoadingState wholePage words="Fetching the car …" />;
  if (cars.data === undefined)
    return <LoadTrouble wholePage error={cars.error} onTryAgain={() => cars.refetch()} />;
  const car = cars.data.find((one) => one.carId === carId);
  if (car === undefined) {
    return (
      <EmptyState
        title="That car is not here"
        action={<LinkButton href={carsAddress(teamId)}>Cars</LinkButton>}
      >
        It does not exist, or it belongs to another team.
      </EmptyState>
    );
  }
  if (card === 'table') return <ImportCardsPage teamId={teamId} car={car} />;
  return card === null ? (
    <CarWithCards teamId={teamId} car={car} />
  ) : (
    <EditCardPage key={card} teamId={teamId} car={car} cardId={card === 'new' ? null : card} />
  );
}

function CarWithCards({ teamId, car }: { teamId: string; car: CarRow }) {
  const team = useTeam(teamId);
  const [editing, setEditing] = useState(false);
  const mayManage = team?.mayManage ?? false;
  return (
    <>
      <PageHeader
        title={car.name}
        above={team?.name}
        facts={[DRIVE_WORDS[car.drive], SURFACE_WORDS[car.surface]]}
        actions={
          mayManage ? (
            <>
              <LinkButton href={reliabilityAddress(teamId, car.carId)}>What keeps failing</LinkButton>
              <Button onClick={() => setEditing(true)}>Change the car</Button>
              <LinkButton look="main" href={cardAddress(teamId, car.carId, 'new')}>
                Add a card
              </LinkButton>
            </>
          ) : null
        }
      />
      <CardList teamId={teamId} carId={car.carId} mayManage={mayManage} />
      <CardsAsTable teamId={teamId} car={car} mayManage={mayManage} />
      {mayManage ? (
        <EditCar teamId={teamId} car={car} open={editing} onClose={() => setEditing(false)} />
      ) : null}
    </>
  );
}
