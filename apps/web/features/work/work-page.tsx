'use client';

import { useSearchParams } from 'next/navigation';
import { type ReactNode, useEffect } from 'react';
import { ErrorState } from '@/components/error-state';
import { LoadingState } from '@/components/loading-state';
import type { OfflineBarProps } from '@/components/offline-bar';
import { Stack } from '@/components/stack';
import { firstScreenStands } from '@/lib/first-screen';
import { bayAddress, eventAddress, logAddress, roadAddress, serviceAddress } from '../events/addresses';
import { BadAddress } from '../events/trouble';
import { useEventClock } from '../events/use-event-clock';
import { useQueryId } from '../events/use-query-id';
import { PageFrame } from '../frame/page-frame';
import { serviceNow } from '../service/visit';
import { carNameOf, serviceNameOf } from './names';
import { type EventWork, type OpenedWork, useEventWork } from './use-event-work';
import { waitsForSignIn } from './waiting-in-words';
import type { WorkSnapshot } from './work-snapshot';
import { SignInLink } from './work-trouble';

/** The work of an event that is here. */
export interface LoadedWork extends OpenedWork {
  teamId: string;
  eventId: string;
  /** The event's official clock in whole seconds; null on the first render. */
  now: number | null;
}

export interface WorkPageProps {
  /** Uses the whole width, for a screen on a wall. */
  wide?: boolean;
  children: (work: LoadedWork) => ReactNode;
}

/** The frame around every screen that shows the log's work: fetching, trouble, connection, links. */
export function WorkPage({ wide = false, children }: WorkPageProps) {
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
    <WorkFrame teamId={teamId} eventId={eventId} wide={wide}>
      {children}
    </WorkFrame>
  );
}

function WorkFrame({
  teamId,
  eventId,
  wide,
  children,
}: Required<WorkPageProps> & { teamId: string; eventId: string }) {
  const work = useEventWork(teamId, eventId);
  const { replica } = work;
  const now = useEventClock(replica ?? undefined, work.receivedAt);
  const { where, links } = useSurroundings(teamId, eventId, work, now);
  const ready = replica !== null && work.status !== 'loading' && work.status !== 'failed';
  useEffect(() => {
    if (ready) firstScreenStands();
  }, [ready]);
  return (
    <PageFrame where={where} links={links} connection={connectionOf(work)} wide={wide}>
      {ready ? (
        <Stack gap="large">{children({ ...work, teamId, eventId, replica, now })}</Stack>
      ) : work.problem ? (
        <ErrorState wholePage sentence={work.problem.message} onTryAgain={work.retry}>
          {work.waiting > 0 ? <p>What you entered and was not sent yet is kept on this phone.</p> : null}
          {work.problem.code === 'signInNeeded' ? <SignInLink /> : null}
        </ErrorState>
      ) : (
        <LoadingState wholePage words="Fetching the event …" />
      )}
    </PageFrame>
  );
}

function connectionOf({ status, waiting, unkept, problem, othersWaiting }: WorkSnapshot): OfflineBarProps {
  const notes = othersWaiting.map(waitsForSignIn);
  // What only the page holds is told where the page says not to close it.
  if (status === 'offline') return { status: 'cutOff', waiting: waiting - unkept, notes };
  // What waits for a sign-in is not being sent; the screen says so where it tells the trouble.
  if (waiting === 0 || problem !== null) return { status: 'connected', notes };
  return { status: 'sending', waiting, notes };
}

/** Which car and service, from the address; where it names none, the first car and the service that is on. */
function useSurroundings(teamId: string, eventId: string, { replica, state }: EventWork, now: number | null) {
  const car = useQueryId('car');
  const letter = useSearchParams().get('at');
  const entry = replica?.entries.find((each) => each.entryId === car) ?? replica?.entries[0];
  const at = letter ?? (replica && entry ? serviceNow(replica, state, entry, now ?? 0)?.id : undefined);
  const event = { href: eventAddress(teamId, eventId), label: 'Event' };
  const log = { href: logAddress(teamId, eventId), label: 'Log' };
  // Until the event is here the address is believed: a link that came later would push another from under a thumb.
  const entryId = replica ? entry?.entryId : car;
  if (!entryId || !at) return { where: replica?.name, links: [event, log] };
  const visit = { team: teamId, event: eventId, car: entryId, at };
  return {
    where:
      replica && letter ? `${carNameOf(replica, entryId)}, ${serviceNameOf(replica, at)}` : replica?.name,
    links: [
      event,
      { href: serviceAddress(visit), label: 'Service' },
      { href: bayAddress(visit), label: 'Bay' },
      { href: roadAddress(visit), label: 'Road' },
      log,
    ],
  };
}
