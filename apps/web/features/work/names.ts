import type { EventReplica } from '@halfshaft/contract';
import type { ServiceId } from '@halfshaft/itinerary';
import { formatClock, servicesOf } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import type { CardId, EntryId, EntryNames, PersonId, TaskRef, WorkState } from '@halfshaft/worklog';
import { placeInWords } from './place-in-words';

/** A person's name; someone this copy of the event does not know yet is just someone. */
export function nameOf(replica: EventReplica, personId: PersonId): string {
  return replica.people.find((person) => person.personId === personId)?.name ?? 'Someone';
}

/** "Service B" · "Remote service C". */
export function serviceNameOf(replica: EventReplica, serviceId: ServiceId): string {
  const service = servicesOf(replica.itinerary).find((each) => each.id === serviceId);
  return service?.kind === 'remoteService' ? `Remote service ${serviceId}` : `Service ${serviceId}`;
}

/** "Car 14", with the car's own name where there are several. */
export function carNameOf(replica: EventReplica, entryId: EntryId): string {
  const entry = replica.entries.find((each) => each.entryId === entryId);
  return entry ? `Car ${entry.carNumber}` : 'A car no longer entered';
}

/** All names an entry of the log needs. */
export function entryNamesOf(replica: EventReplica, state: WorkState): EntryNames {
  const cards = new Map<CardId, JobCard>(
    replica.entries.flatMap((entry) => entry.cards).map((card) => [card.id, card]),
  );
  const readings = new Map(
    [...cards.values()].flatMap((card) => card.readings).map((reading) => [reading.id, reading.name]),
  );
  const stages = new Set(
    replica.itinerary.points.filter((point) => point.kind === 'stage').map((point) => point.id),
  );
  return {
    person: (id) => nameOf(replica, id),
    task: (ref) => taskName(ref, cards, state),
    card: (id) => cards.get(id)?.name ?? 'a job no longer on the list',
    service: (id) => serviceNameOf(replica, id),
    stage: (id) => id,
    control: (id) => (stages.has(id) ? `the start of ${id}` : id),
    clock: (at) => formatClock(at, replica.itinerary.timeZone),
    reading: (id) => readings.get(id) ?? id,
  };
}

function taskName({ source }: TaskRef, cards: ReadonlyMap<CardId, JobCard>, state: WorkState): string {
  if (source.kind === 'card') return cards.get(source.cardId)?.name ?? 'a job no longer on the list';
  const snag = state.snags.get(source.snagId);
  return snag ? `${placeInWords(snag.place)}: ${snag.words}` : 'a snag';
}
