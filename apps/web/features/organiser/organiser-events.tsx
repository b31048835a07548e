'use client';

import { EmptyState } from '@/components/empty-state';
import { Table, type TableColumn } from '@/components/table';
import { dayInWords } from '@/lib/day-in-words';
import { RowLink } from '../events/row-link';
import { organiserEventAddress } from './organiser-addresses';
import { type OrganiserEvent, standingInWords } from './organiser-event';
import { PublishEvent } from './publish-event';

export interface OrganiserEventsProps {
  organiserId: string;
  events: readonly OrganiserEvent[];
}

export function OrganiserEvents({ organiserId, events }: OrganiserEventsProps) {
  if (events.length === 0) {
    return (
      <EmptyState title="No event yet">
        Paste the itinerary once; every team can take it over when you publish it.
      </EmptyState>
    );
  }
  const columns: TableColumn<OrganiserEvent>[] = [
    {
      key: 'name',
      heading: 'Event',
      leads: true,
      cell: ({ publishedEventId, name }) => (
        <RowLink href={organiserEventAddress(organiserId, publishedEventId)}>{name}</RowLink>
      ),
    },
    { key: 'startsOn', heading: 'First day', cell: ({ startsOn }) => dayInWords(startsOn) },
    { key: 'standing', heading: 'Standing', cell: standingInWords },
    {
      key: 'publish',
      heading: 'Publish',
      cell: (event) =>
        event.publishedAt === null ? <PublishEvent organiserId={organiserId} event={event} /> : null,
    },
  ];
  return (
    <Table
      caption="Events of the organiser"
      captionHidden
      columns={columns}
      rows={events}
      rowKey={(event) => event.publishedEventId}
    />
  );
}
