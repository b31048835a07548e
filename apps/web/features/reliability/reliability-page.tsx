'use client';

import type { CarOutline, ReliabilityOfTeam } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { api } from '@/lib/api';
import { carsAddress } from '../events/addresses';
import { TeamPage } from '../events/team-page';
import { LoadTrouble } from '../events/trouble';
import { useQueryId } from '../events/use-query-id';
import { useTeam } from '../events/use-team';
import { CarChoice } from './car-choice';
import { CarReliability } from './car-reliability';

/** What keeps failing, whether it gets better and what to change: one car at a time, over all its events. */
export function ReliabilityPage() {
  return <TeamPage>{(teamId) => <OfTeam teamId={teamId} />}</TeamPage>;
}

function OfTeam({ teamId }: { teamId: string }) {
  const team = useTeam(teamId);
  const mayManage = team?.mayManage ?? false;
  const outline = useQuery({ ...api.reliability.ofTeam.queryOptions({ teamId }), enabled: mayManage });
  const title = `What keeps failing, ${team?.name ?? ''}`;
  const print = mayManage ? <PrintButton foot={title}>Print</PrintButton> : null;
  const header = <PageHeader title="What keeps failing" above={team?.name} actions={print} />;
  if (team && !mayManage) {
    return (
      <>
        {header}
        <EmptyState title="For managers">A manager of the team sees what failed on its cars.</EmptyState>
      </>
    );
  }
  if (outline.isPending) return <LoadingState words="Counting what failed …" />;
  if (outline.data === undefined) {
    return <LoadTrouble wholePage error={outline.error} onTryAgain={() => outline.refetch()} />;
  }
  return (
    <>
      {header}
      <Cars teamId={teamId} outline={outline.data} />
    </>
  );
}

function Cars({ teamId, outline }: { teamId: string; outline: ReliabilityOfTeam }) {
  const wanted = useQueryId('car');
  const shown = outline.cars.find(({ carId }) => carId === wanted) ?? mostFailed(outline.cars);
  if (shown === undefined) {
    return (
      <EmptyState title="No car yet" action={<LinkButton href={carsAddress(teamId)}>Cars</LinkButton>}>
        Once a car has been looked at in service, what was out of order is counted here.
      </EmptyState>
    );
  }
  return (
    <>
      {outline.cars.length > 1 ? (
        <CarChoice teamId={teamId} cars={outline.cars} shownId={shown.carId} />
      ) : null}
      <CarReliability key={shown.carId} teamId={teamId} car={shown} events={outline.events} />
    </>
  );
}

function mostFailed(cars: readonly CarOutline[]): CarOutline | undefined {
  const times = (car: CarOutline) => car.parts.reduce((sum, { failures }) => sum + failures.length, 0);
  return cars.toSorted((one, other) => times(other) - times(one))[0];
}
