import type { EntryReplica } from '@halfshaft/contract';
import { useQuery } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Sheet } from '@/components/sheet';
import { api } from '@/lib/api';
import { carNameOf } from '../work/names';
import { newId } from '../work/new-id';
import { useEventWork } from '../work/use-event-work';
import type { LoadedWork } from '../work/work-page';
import type { OpenItem } from './open-items';
import { notTakenYet } from './snag-words';

interface TakeAlongProps {
  work: LoadedWork;
  entry: EntryReplica;
  items: readonly OpenItem[];
}

/** What is open goes along to a later event of the same car: one tap raises it there, with the source named. */
export function TakeAlong({ work, entry, items }: TakeAlongProps) {
  const { teamId, eventId, replica } = work;
  const events = useQuery(api.event.list.queryOptions({ teamId }));
  const here = events.data?.find((event) => event.eventId === eventId);
  const later = (events.data ?? []).filter(
    (event) => event.eventId !== eventId && here !== undefined && event.startsOn >= here.startsOn,
  );
  const choices = later.flatMap((event) =>
    event.cars.filter(({ carId }) => carId === entry.car.carId).map(({ entryId }) => ({ event, entryId })),
  );
  return (
    <div className="screen-only">
      <Sheet title={`${carNameOf(replica, entry.entryId)}: to the next event`}>
        {items.length === 0 ? <p>Nothing is open.</p> : null}
        {items.length > 0 && choices.length === 0 ? (
          <p>Once the car is entered at a later event, what is open can be raised there as snags.</p>
        ) : null}
        {items.length === 0
          ? null
          : choices.map(({ event, entryId }) => (
              <TakeTo
                key={event.eventId}
                teamId={teamId}
                eventId={event.eventId}
                eventName={event.name}
                from={replica.name}
                entryId={entryId}
                items={items}
              />
            ))}
      </Sheet>
    </div>
  );
}

interface TakeToProps {
  teamId: string;
  eventId: string;
  eventName: string;
  /** The event it comes from. */
  from: string;
  entryId: string;
  items: readonly OpenItem[];
}

function TakeTo({ teamId, eventId, eventName, from, entryId, items }: TakeToProps) {
  const there = useEventWork(teamId, eventId);
  const [told, setTold] = useState('');
  const { replica, state, act } = there;
  if (replica === null) return <p>Fetching {eventName} …</p>;
  const left = notTakenYet(
    items,
    from,
    [...state.snags.values()].filter((snag) => snag.entryId === entryId),
  );
  const me = replica.me.personId;
  function take() {
    const raised = left.filter(({ item, words }) => {
      const snag = { snagId: newId(), entryId, serviceId: null, place: item.place, words, urgent: false };
      return act('raiseSnag', snag, me).ok;
    });
    setTold(`${raised.length} raised at ${eventName}; they stand at its first service.`);
  }
  return (
    <>
      {told === '' ? null : (
        <Notice title="Taken along" spoken>
          <p>{told}</p>
        </Notice>
      )}
      {left.length === 0 ? (
        <p>Everything open is on the list of {eventName}.</p>
      ) : (
        <Button look="main" onClick={take}>
          Raise {left.length === 1 ? '1 snag' : `${left.length} snags`} at {eventName}
        </Button>
      )}
    </>
  );
}
