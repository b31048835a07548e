'use client';

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { LoadingState } from '@/components/loading-state';
import { api } from '@/lib/api';
import { BadAddress, LoadTrouble } from '../events/trouble';
import { useQueryId } from '../events/use-query-id';
import { OrganiserFrame } from '../organiser/organiser-frame';
import { RetirementsScreen } from './retirements-screen';

/** Who started one event, who stopped, and why. */
export function RetirementsPage() {
  return <OrganiserFrame>{(organiserId) => <OfEvent organiserId={organiserId} />}</OrganiserFrame>;
}

function OfEvent({ organiserId }: { organiserId: string }) {
  const publishedEventId = useQueryId('event');
  return publishedEventId === null ? <BadAddress /> : <Loaded own={{ organiserId, publishedEventId }} />;
}

function Loaded({ own }: { own: { organiserId: string; publishedEventId: string } }) {
  const found = useQuery(api.retirement.get.queryOptions(own));
  // What the device kept of it may be older than another's list, which saving would then be refused over again and again.
  const [openedAt] = useState(() => Date.now());
  const isOfNow = found.dataUpdatedAt >= openedAt || found.isError;
  if (!isOfNow) return <LoadingState words="Fetching the list …" />;
  if (found.data === undefined) {
    return <LoadTrouble wholePage error={found.error} onTryAgain={() => found.refetch()} />;
  }
  return <RetirementsScreen own={own} event={found.data} />;
}
