'use client';

import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { PageHeader } from '@/components/page-header';
import { PrintButton } from '@/components/print-button';
import { eventAddress } from '../events/addresses';
import { carNameOf } from '../work/names';
import { type LoadedWork, WorkPage } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import { EndOfCar } from './end-of-car';

export function EndPage() {
  return <WorkPage>{(work) => <EndScreen work={work} />}</WorkPage>;
}

/** After the last control: what was found, what is only patched, what was left, what to order, what the workshop does. */
function EndScreen({ work }: { work: LoadedWork }) {
  const { replica, teamId, eventId } = work;
  return (
    <>
      <WorkTrouble work={work} />
      <PageHeader
        above={replica.name}
        title="After the event"
        facts={replica.entries.map((entry) => `${carNameOf(replica, entry.entryId)}, ${entry.car.name}`)}
        actions={<PrintButton foot={`After the event, ${replica.name}`}>Print</PrintButton>}
      />
      {replica.entries.length === 0 ? (
        <EmptyState
          title="No car was entered"
          action={<LinkButton href={eventAddress(teamId, eventId)}>To the event</LinkButton>}
        >
          <p>Once a car is entered, what its services found and left stands here.</p>
        </EmptyState>
      ) : null}
      {replica.entries.map((entry) => (
        <EndOfCar key={entry.entryId} work={work} entry={entry} />
      ))}
    </>
  );
}
