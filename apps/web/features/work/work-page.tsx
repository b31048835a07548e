'use client';

import type { EventReplica } from '@halfshaft/contract';
import { usePathname, useSearchParams } from 'next/navigation';
import type { ReactNode } from 'react';
import { ErrorState } from '@/components/error-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { Notice } from '@/components/notice';
import type { ConnectionStatus } from '@/components/offline-bar';
import { Stack } from '@/components/stack';
import { bayAddress, eventAddress, logAddress, serviceAddress, signInAddress } from '../events/addresses';
import { BadAddress } from '../events/trouble';
import { useEventClock } from '../events/use-event-clock';
import { useQueryId } from '../events/use-query-id';
import { PageFrame } from '../frame/page-frame';
import { serviceNow } from '../service/visit';
import { carNameOf, serviceNameOf } from './names';
import { type EventWork, useEventWork } from './use-event-work';
import type { WorkSnapshot } from './work-store';

/** The work of an event that is here. */
export interface LoadedWork extends EventWork {
  teamId: string;
  eventId: string;
  replica: EventReplica;
  /** The event's official clock in whole seconds; null on the first render. */
  now: number | null;
}

export interface WorkPageProps {
  children: (work: LoadedWork) => ReactNode;
}

/** The frame around every screen that shows the log's work: fetching, trouble, connection, links. */
export function WorkPage({ children }: WorkPageProps) {
  const teamId = useQueryId('team');
  const eventId = useQueryId('event');
  if (teamId === null || eventId === null) {
    return (
      <PageFrame>
        <BadAddress />
      </PageFrame>
    );
  }
  return (
    <WorkFrame teamId={teamId} eventId={eventId}>
      {children}
    </WorkFrame>
  );
}

function WorkFrame({ teamId, eventId, children }: WorkPageProps & { teamId: string; eventId: string }) {
  const work = useEventWork(teamId, eventId);
  const { replica } = work;
  const now = useEventClock(replica ?? undefined, work.receivedAt);
  const { where, links } = useSurroundings(teamId, eventId, replica, now);
  const ready = replica !== null && work.status !== 'loading' && work.status !== 'failed';
  return (
    <PageFrame where={where} links={links} connection={{ status: connectionOf(work), waiting: work.waiting }}>
      {ready ? (
        <Stack gap="large">
          <WorkTrouble work={work} />
          {children({ ...work, teamId, eventId, replica, now })}
        </Stack>
      ) : work.problem ? (
        <ErrorState sentence={work.problem.message} onTryAgain={work.retry}>
          {work.problem.code === 'signInNeeded' ? <SignInLink /> : null}
        </ErrorState>
      ) : (
        <LoadingState words="Fetching the event …" />
      )}
    </PageFrame>
  );
}

function connectionOf({ status, waiting }: WorkSnapshot): ConnectionStatus {
  if (status === 'offline') return 'cutOff';
  return waiting > 0 ? 'sending' : 'connected';
}

/** Trouble while the screen still shows what is known. A lost connection is told by the bar of the frame. */
function WorkTrouble({ work }: { work: EventWork }) {
  const { problem, status, waiting, isKept } = work;
  const told = problem !== null && status !== 'offline';
  return (
    <>
      {isKept || waiting === 0 ? null : (
        <Notice kind="warning" title="Do not close this page" spoken>
          <p>This browser keeps nothing. What waits is lost when the page is closed before it was sent.</p>
        </Notice>
      )}
      {told ? (
        <Notice kind="problem" title={waiting > 0 ? 'Not sent' : 'Out of date'} spoken>
          <p>{problem.message}</p>
          {waiting > 0 ? <p>What you entered is kept on this phone.</p> : null}
          {problem.code === 'signInNeeded' ? <SignInLink /> : null}
        </Notice>
      ) : null}
      {status === 'behind' && !told ? (
        <p role="status">What others do shows up here every 20 seconds just now.</p>
      ) : null}
    </>
  );
}

/** Sign in, and come back to this screen. */
function SignInLink() {
  const pathname = usePathname();
  const query = useSearchParams().toString();
  return (
    <LinkButton href={signInAddress(query === '' ? pathname : `${pathname}?${query}`)}>Sign in</LinkButton>
  );
}

/** Which car and service, from the address; where it names none, the first car and the service that is on. */
function useSurroundings(teamId: string, eventId: string, replica: EventReplica | null, now: number | null) {
  const car = useQueryId('car');
  const letter = useSearchParams().get('at');
  const entry = replica?.entries.find((each) => each.entryId === car) ?? replica?.entries[0];
  const at = letter ?? (replica && entry ? serviceNow(replica, entry, now ?? 0)?.id : undefined);
  const event = { href: eventAddress(teamId, eventId), label: 'Event' };
  const log = { href: logAddress(teamId, eventId), label: 'Log' };
  if (!replica || !entry || !at) return { where: replica?.name, links: [event, log] };
  const visit = { team: teamId, event: eventId, car: entry.entryId, at };
  return {
    where: letter ? `${carNameOf(replica, entry.entryId)}, ${serviceNameOf(replica, at)}` : replica.name,
    links: [
      event,
      { href: serviceAddress(visit), label: 'Service' },
      { href: bayAddress(visit), label: 'Bay' },
      log,
    ],
  };
}
