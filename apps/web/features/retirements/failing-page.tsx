'use client';

import { useQuery } from '@tanstack/react-query';
import { LoadingState } from '@/components/loading-state';
import { api } from '@/lib/api';
import { LoadTrouble } from '../events/trouble';
import { OrganiserFrame } from '../organiser/organiser-frame';
import { FailingScreen } from './failing-screen';

/** What keeps failing, over all events of the organiser. */
export function FailingPage() {
  return <OrganiserFrame>{(organiserId) => <Loaded organiserId={organiserId} />}</OrganiserFrame>;
}

function Loaded({ organiserId }: { organiserId: string }) {
  const found = useQuery(api.retirement.figures.queryOptions({ organiserId }));
  const mine = useQuery(api.team.mine.queryOptions());
  if (found.isPending) return <LoadingState words="Fetching the events …" />;
  if (found.data === undefined) {
    return <LoadTrouble wholePage error={found.error} onTryAgain={() => found.refetch()} />;
  }
  const name = mine.data?.organisers.find((one) => one.organiserId === organiserId)?.name;
  return <FailingScreen organiserId={organiserId} organiserName={name} over={found.data} />;
}
