'use client';

import type { listEventsOutput } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import type { z } from 'zod';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { Stack } from '@/components/stack';
import { Table, type TableColumn } from '@/components/table';
import { api } from '@/lib/api';
import { dayInWords } from '@/lib/day-in-words';
import { eventAddress, newEventAddress } from '../events/addresses';
import { RowLink } from '../events/row-link';
import { LoadTrouble } from '../events/trouble';
import { ROLE_WORDS } from '../people/role-words';
import type { MyTeam } from './choose-team';
import { mayManageTeam } from './may-manage-team';

type EventRow = z.infer<typeof listEventsOutput>[number];

export function TeamHome({ team }: { team: MyTeam }) {
  return (
    <>
      <PageHeader title={team.name} facts={[`Your role: ${ROLE_WORDS[team.role]}`]} />
      <TeamEvents teamId={team.teamId} mayManage={mayManageTeam(team)} />
    </>
  );
}

function TeamEvents({ teamId, mayManage }: { teamId: string; mayManage: boolean }) {
  const events = useQuery(api.event.list.queryOptions({ teamId }));
  if (events.isPending) return <LoadingState words="Fetching the events …" />;
  if (events.data === undefined) {
    return <LoadTrouble error={events.error} onTryAgain={() => events.refetch()} />;
  }
  if (events.data.length === 0) {
    return (
      <EmptyState
        title="No event yet"
        action={
          mayManage ? (
            <LinkButton href={newEventAddress(teamId)} look="main">
              Make the first event
            </LinkButton>
          ) : null
        }
      >
        {mayManage
          ? 'Paste its itinerary, or take over one that an organiser has published.'
          : 'A manager of the team makes the first one.'}
      </EmptyState>
    );
  }
  return (
    <Table
      caption="Events"
      columns={columnsFor(teamId)}
      rows={events.data}
      rowKey={(event) => event.eventId}
    />
  );
}

function columnsFor(teamId: string): TableColumn<EventRow>[] {
  return [
    {
      key: 'name',
      heading: 'Event',
      leads: true,
      cell: ({ eventId, name }) => <RowLink href={eventAddress(teamId, eventId)}>{name}</RowLink>,
    },
    { key: 'day', heading: 'First day', cell: ({ startsOn }) => dayInWords(startsOn) },
    { key: 'cars', heading: 'Cars', cell: (event) => <EventCars teamId={teamId} event={event} /> },
  ];
}

function EventCars({ teamId, event }: { teamId: string; event: EventRow }) {
  if (event.cars.length === 0) return 'none entered yet';
  return (
    <Stack across>
      {event.cars.map((car) => (
        <RowLink key={car.entryId} href={`${eventAddress(teamId, event.eventId)}&car=${car.entryId}`}>
          {`${car.carNumber} ${car.carName}`}
        </RowLink>
      ))}
    </Stack>
  );
}
