'use client';

import type { CarRow } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { EmptyState } from '@/components/empty-state';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { Table, type TableColumn } from '@/components/table';
import { api } from '@/lib/api';
import { carAddress } from '../events/addresses';
import { RowLink } from '../events/row-link';
import { TeamPage } from '../events/team-page';
import { LoadTrouble } from '../events/trouble';
import { useTeam } from '../events/use-team';
import { AddCar } from './add-car';
import { DRIVE_WORDS, SURFACE_WORDS } from './car-words';

export function CarsPage() {
  return <TeamPage>{(teamId) => <Cars teamId={teamId} />}</TeamPage>;
}

function Cars({ teamId }: { teamId: string }) {
  const team = useTeam(teamId);
  return (
    <>
      <PageHeader title="Cars" above={team?.name} />
      <CarList teamId={teamId} mayManage={team?.mayManage ?? false} />
      {team?.mayManage ? <AddCar teamId={teamId} /> : null}
    </>
  );
}

function CarList({ teamId, mayManage }: { teamId: string; mayManage: boolean }) {
  const cars = useQuery(api.car.list.queryOptions({ teamId }));
  if (cars.isPending) return <LoadingState words="Fetching the cars …" />;
  if (cars.data === undefined) {
    return <LoadTrouble error={cars.error} onTryAgain={() => cars.refetch()} />;
  }
  if (cars.data.length === 0) {
    return (
      <EmptyState title="No car yet">
        {mayManage
          ? 'Describe the car once: every event it drives then has its rounds and jobs.'
          : 'A manager of the team adds the first one.'}
      </EmptyState>
    );
  }
  const columns: TableColumn<CarRow>[] = [
    {
      key: 'name',
      heading: 'Car',
      leads: true,
      cell: (car) => <RowLink href={carAddress(teamId, car.carId)}>{car.name}</RowLink>,
    },
    { key: 'drive', heading: 'Drive', cell: (car) => DRIVE_WORDS[car.drive] },
    { key: 'surface', heading: 'Surface', cell: (car) => SURFACE_WORDS[car.surface] },
  ];
  return (
    <Table
      caption="Cars of the team"
      captionHidden
      columns={columns}
      rows={cars.data}
      rowKey={(car) => car.carId}
    />
  );
}
