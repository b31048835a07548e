'use client';

import { useSearchParams } from 'next/navigation';
import type { ReactNode } from 'react';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { Stack } from '@/components/stack';
import { eventAddress } from '../events/addresses';
import { useQueryId } from '../events/use-query-id';
import { carNameOf, serviceNameOf } from '../work/names';
import { type LoadedWork, WorkPage } from '../work/work-page';
import { findVisit, serviceNow, type Visit } from './visit';

export interface VisitPageProps {
  /** Where the choices of car and service lead. */
  addressOf: (visit: { team: string; event: string; car: string; at: string }) => string;
  children: (work: LoadedWork, visit: Visit) => ReactNode;
}

/** The frame around a screen about one service of one car; offers a choice when the address names none. */
export function VisitPage({ addressOf, children }: VisitPageProps) {
  const car = useQueryId('car');
  const at = useSearchParams().get('at');
  return (
    <WorkPage>
      {(work) => {
        const visit = findVisit(work.replica, car, at);
        return visit ? children(work, visit) : <ChooseVisit work={work} addressOf={addressOf} />;
      }}
    </WorkPage>
  );
}

function ChooseVisit({ work, addressOf }: { work: LoadedWork; addressOf: VisitPageProps['addressOf'] }) {
  const { replica, state, teamId, eventId, now } = work;
  const choices = replica.entries.flatMap((entry) => {
    const service = serviceNow(replica, state, entry, now ?? 0);
    return service ? [{ entry, service }] : [];
  });
  if (choices.length === 0) {
    return (
      <>
        <PageHeader title={replica.name} />
        <EmptyState
          title="No car and service to show"
          action={<LinkButton href={eventAddress(teamId, eventId)}>To the event</LinkButton>}
        >
          <p>Enter a car and give the event an itinerary with a service.</p>
        </EmptyState>
      </>
    );
  }
  return (
    <>
      <PageHeader title={replica.name} />
      <EmptyState title="Which car?">
        <p>The address names no car and service of this event. Choose one.</p>
        <Stack gap="small" across>
          {choices.map(({ entry, service }) => (
            <LinkButton
              key={entry.entryId}
              href={addressOf({ team: teamId, event: eventId, car: entry.entryId, at: service.id })}
            >
              {carNameOf(replica, entry.entryId)}, {serviceNameOf(replica, service.id)}
            </LinkButton>
          ))}
        </Stack>
      </EmptyState>
    </>
  );
}
