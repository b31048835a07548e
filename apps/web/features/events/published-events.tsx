'use client';

import { useMutation, useQuery } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { LoadingState } from '@/components/loading-state';
import { Sheet } from '@/components/sheet';
import { Table, type TableColumn } from '@/components/table';
import { api, problemOf } from '@/lib/api';
import { dayInWords } from '@/lib/day-in-words';
import { LoadTrouble, SaveTrouble } from './trouble';

export interface PublishedEventsProps {
  teamId: string;
  onTakenOver: (eventId: string) => void;
}

/** Events that organisers have published: taken over with one press, itinerary and all. */
export function PublishedEvents({ teamId, onTakenOver }: PublishedEventsProps) {
  return (
    <Sheet title="Take over a published event">
      <PublishedList teamId={teamId} onTakenOver={onTakenOver} />
    </Sheet>
  );
}

function PublishedList({ teamId, onTakenOver }: PublishedEventsProps) {
  const published = useQuery(api.event.published.queryOptions());
  const takeOver = useMutation(
    api.event.takeOver.mutationOptions({ onSuccess: ({ eventId }) => onTakenOver(eventId) }),
  );
  if (published.isPending) return <LoadingState words="Fetching published events …" />;
  if (published.data === undefined) {
    return <LoadTrouble error={published.error} onTryAgain={() => published.refetch()} />;
  }
  if (published.data.length === 0) return <p>No organiser has published an event yet.</p>;

  const columns: TableColumn<(typeof published.data)[number]>[] = [
    { key: 'name', heading: 'Event', leads: true, cell: (event) => event.name },
    { key: 'organiser', heading: 'Organiser', cell: (event) => event.organiserName },
    { key: 'startsOn', heading: 'First day', cell: ({ startsOn }) => dayInWords(startsOn) },
    {
      key: 'take',
      heading: 'Take over',
      cell: ({ organiserId, publishedEventId, name }) => (
        <Button
          busy={takeOver.isPending && takeOver.variables.publishedEventId === publishedEventId}
          busyWords="Taking over …"
          aria-label={`Take over ${name}`}
          onClick={() => takeOver.mutate({ teamId, organiserId, publishedEventId })}
        >
          Take over
        </Button>
      ),
    },
  ];
  return (
    <>
      <p>It becomes your team's own, with a copy of its itinerary.</p>
      <Table
        caption="Published events"
        captionHidden
        columns={columns}
        rows={published.data}
        rowKey={(event) => event.publishedEventId}
      />
      <SaveTrouble problem={takeOver.error ? problemOf(takeOver.error) : null} />
    </>
  );
}
