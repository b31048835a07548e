'use client';

import { useQuery } from '@tanstack/react-query';
import { useSearchParams } from 'next/navigation';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { LoadTrouble } from '../events/trouble';
import { ToldShares } from '../share/told-shares';
import { EventEditor } from './event-editor';
import { organiserAddress, organiserEventAddress } from './organiser-addresses';
import { OrganiserEvents } from './organiser-events';
import { OrganiserFrame } from './organiser-frame';

/** An organiser's events; with `event` in the address, that event's itinerary in place of the list. */
export function OrganiserPage() {
  return <OrganiserFrame>{(organiserId) => <Organiser organiserId={organiserId} />}</OrganiserFrame>;
}

function Organiser({ organiserId }: { organiserId: string }) {
  const eventId = useSearchParams().get('event');
  const mine = useQuery(api.team.mine.queryOptions());
  const events = useQuery(api.organiser.events.queryOptions({ organiserId }));
  const name = mine.data?.organisers.find((one) => one.organiserId === organiserId)?.name;
  if (events.isPending) return <LoadingState wholePage words="Fetching the events …" />;
  if (events.data === undefined) {
    return <LoadTrouble wholePage error={events.error} onTryAgain={() => events.refetch()} />;
  }
  if (eventId !== null) {
    const event = events.data.find((one) => one.publishedEventId === eventId) ?? null;
    if (event === null && eventId !== 'new') {
      return (
        <EmptyState
          title="That event is not here"
          action={<LinkButton href={organiserAddress(organiserId)}>Events</LinkButton>}
        >
          It does not exist, or it belongs to another organiser.
        </EmptyState>
      );
    }
    return <EventEditor organiserId={organiserId} organiserName={name} event={event} />;
  }
  return (
    <>
      <PageHeader
        title="Events"
        above={name}
        actions={
          <LinkButton look="main" href={organiserEventAddress(organiserId, 'new')}>
            New event
          </LinkButton>
        }
      />
      <OrganiserEvents organiserId={organiserId} events={events.data} />
      <ToldShares organiserId={organiserId} />
    </>
  );
}
