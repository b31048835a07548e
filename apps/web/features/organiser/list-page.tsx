'use client';

import type { UseQueryResult } from '@tanstack/react-query';
import { type ReactNode, useState } from 'react';
import { LoadingState } from '@/components/loading-state';
import { BadAddress, LoadTrouble } from '../events/trouble';
import { useQueryId } from '../events/use-query-id';
import { OrganiserFrame } from './organiser-frame';

/** The event of an organiser that an address names. */
export interface OwnEvent {
  organiserId: string;
  publishedEventId: string;
}

/** The frame around a list that an organiser keeps of one published event. */
export function ListPage({ children }: { children: (own: OwnEvent) => ReactNode }) {
  return (
    <OrganiserFrame>
      {(organiserId) => <OfEvent organiserId={organiserId}>{children}</OfEvent>}
    </OrganiserFrame>
  );
}

function OfEvent({ organiserId, children }: { organiserId: string; children: (own: OwnEvent) => ReactNode }) {
  const publishedEventId = useQueryId('event');
  return publishedEventId === null ? <BadAddress /> : children({ organiserId, publishedEventId });
}

export interface ListOfNowProps<Data> {
  found: UseQueryResult<Data, unknown>;
  children: (data: Data) => ReactNode;
}

/** Waits for an answer of now, or says why there is none. */
export function ListOfNow<Data>({ found, children }: ListOfNowProps<Data>) {
  // What the device kept of it may be older than another's list, which saving would then be refused over again and again.
  const [openedAt] = useState(() => Date.now());
  const isOfNow = found.dataUpdatedAt >= openedAt || found.isError;
  if (!isOfNow) return <LoadingState words="Fetching the list …" />;
  if (found.data === undefined) {
    return <LoadTrouble wholePage error={found.error} onTryAgain={() => found.refetch()} />;
  }
  return children(found.data);
}
