'use client';

import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { api } from '@/lib/api';
import { eventAddress } from '../events/addresses';
import { LoadTrouble } from '../events/trouble';
import { type LoadedWork, WorkPage } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { type Accepted, AcceptedBulletin } from './accepted-bulletin';
import { BulletinScreen } from './bulletin-screen';

export function BulletinPage() {
  return <WorkPage>{(work) => <OpenBulletin work={work} />}</WorkPage>;
}

/** The newest bulletin that the team has not accepted. */
function OpenBulletin({ work }: { work: LoadedWork }) {
  const { teamId, eventId } = work;
  const bulletin = useQuery(api.bulletin.open.queryOptions({ teamId, eventId }));
  const [accepted, setAccepted] = useState<Accepted | null>(null);
  if (bulletin.isPending) return <LoadingState words="Fetching the bulletin …" />;
  if (bulletin.data === undefined) {
    return <LoadTrouble error={bulletin.error} onTryAgain={() => bulletin.refetch()} />;
  }
  return (
    <>
      <WorkTrouble work={work} />
      {accepted !== null ? (
        <AcceptedBulletin work={work} accepted={accepted} />
      ) : bulletin.data ? (
        <BulletinScreen work={work} bulletin={bulletin.data} onAccepted={setAccepted} />
      ) : (
        <NoBulletin work={work} />
      )}
    </>
  );
}

function NoBulletin({ work: { teamId, eventId, replica } }: { work: LoadedWork }) {
  return (
    <>
      <PageHeader above={replica.name} title="Bulletins" />
      <EmptyState
        title="No bulletin waits"
        action={<LinkButton href={eventAddress(teamId, eventId)}>To the event</LinkButton>}
      >
        <p>
          When the organiser of an event you took over issues one, what it changes for your cars stands here.
          An event of your own has none.
        </p>
      </EmptyState>
    </>
  );
}
