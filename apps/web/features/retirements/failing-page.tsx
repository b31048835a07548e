'use client';

import { keepPreviousData, useQuery } from '@tanstack/react-query';
import { useState } from 'react';
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
  const [className, setClassName] = useState<string | null>(null);
  const of = { organiserId, className };
  // Another class fills the page that is there, instead of blanking it.
  const kept = { placeholderData: keepPreviousData };
  const found = useQuery(api.retirement.figures.queryOptions(of, kept));
  const times = useQuery(api.timeList.figures.queryOptions(of, kept));
  const mine = useQuery(api.team.mine.queryOptions());
  if (found.isPending || times.isPending) return <LoadingState words="Fetching the events …" />;
  if (found.data === undefined || times.data === undefined) {
    const again = () => Promise.all([found.refetch(), times.refetch()]);
    return <LoadTrouble wholePage error={found.error ?? times.error} onTryAgain={again} />;
  }
  const name = mine.data?.organisers.find((one) => one.organiserId === organiserId)?.name;
  return (
    <FailingScreen
      organiserId={organiserId}
      organiserName={name}
      over={found.data}
      times={times.data}
      className={className}
      onChooseClass={setClassName}
    />
  );
}
