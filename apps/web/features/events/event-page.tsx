'use client';

import type { ReactNode } from 'react';
import { Stack } from '@/components/stack';
import { PageFrame } from '../frame/page-frame';
import {
  eventAddress,
  HOME_ADDRESS,
  itineraryAddress,
  logAddress,
  peopleAddress,
  teamAddress,
} from './addresses';
import { BadAddress } from './trouble';
import { useQueryId } from './use-query-id';

interface EventIds {
  teamId: string;
  eventId: string;
}

/** The frame around a page of one event of a team. */
export function EventPage({ children }: { children: (ids: EventIds) => ReactNode }) {
  const teamId = useQueryId('team');
  const eventId = useQueryId('event');
  if (teamId === null || eventId === null) {
    return (
      <PageFrame>
        <BadAddress />
      </PageFrame>
    );
  }
  const links = [
    { href: eventAddress(teamId, eventId), label: 'Event' },
    { href: itineraryAddress(teamId, eventId), label: 'Itinerary' },
    { href: logAddress(teamId, eventId), label: 'Log' },
    { href: peopleAddress(teamId), label: 'People' },
    { href: teamAddress(teamId), label: 'Home' },
  ];
  return (
    <PageFrame homeHref={HOME_ADDRESS} links={links}>
      <Stack gap="large">{children({ teamId, eventId })}</Stack>
    </PageFrame>
  );
}
