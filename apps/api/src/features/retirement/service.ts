import type { FieldOfEvent, RetirementFigures, saveRetirementsInput } from '@halfshaft/contract';
import {
  CAUSE_WORDS,
  type CarRecord,
  carClasses,
  countCars,
  type DrivenStretch,
  drivenStretches,
  readRetirementList,
  recordsOfClass,
  stageMetresOf,
} from '@halfshaft/itinerary';
import { type FieldStretch, fieldFigures, pareto } from '@halfshaft/reliability';
import type { OrganiserTx } from '@halfshaft/store';
import type { z } from 'zod';
import { AppError, unknown } from '../../errors';
import { findOwnMembership, type HeldEvent, listHeldEvents, writeRetirementList } from './data';

const METRES_IN_KM = 1000;
/** A team's own choice says nothing about what fails, so it is no cause of its own. */
const CAUSES = Object.keys(CAUSE_WORDS).filter((cause) => cause !== 'withdrawn');

/** The list of one event as it was pasted, and what it tells. */
export async function getRetirements(tx: OrganiserTx, userId: string, publishedEventId: string) {
  const event = await requireHeld(tx, publishedEventId);
  const { name, startsOn, itinerary, list } = event;
  const head = { name, startsOn, timeZone: itinerary.timeZone, itinerary };
  if (list === null) return { ...head, saved: null };
  const savedByYou = list.savedBy === (await findOwnMembership(tx, userId));
  const { source, savedAt, records } = list;
  const saved = {
    source,
    savedAt,
    savedByYou,
    records,
    field: fieldOf(event, records),
    ...figuresOf([event]),
  };
  return { ...head, saved };
}

/** The list in place of the one before. With problems nothing is saved. */
export async function saveRetirements(
  tx: OrganiserTx,
  userId: string,
  { publishedEventId, source, replaces }: z.infer<typeof saveRetirementsInput>,
  now: number,
) {
  const { itinerary, list } = await requireHeld(tx, publishedEventId);
  const { records, problems } = readRetirementList(source, itinerary);
  if (problems.length > 0) return { ok: false as const, problems };
  const cars = new Set(records.map(({ carNumber }) => carNumber)).size;
  // The same list again is the same save, whoever sends it.
  if (list?.source === source) return { ok: true as const, cars, savedAt: list.savedAt };
  refuseUnseen(list, replaces);
  const savedBy = await findOwnMembership(tx, userId);
  await writeRetirementList(tx, publishedEventId, { source, records, savedBy, savedAt: now });
  return { ok: true as const, cars, savedAt: now };
}

/** What the events together tell, those with a list; of one class only where it is named. */
export async function overEvents(tx: OrganiserTx, className: string | null) {
  const events = (await listHeldEvents(tx)).flatMap((event) =>
    event.list ? [{ event, list: event.list }] : [],
  );
  const counted = events.map(({ event, list }) => {
    const records = className === null ? list.records : recordsOfClass(list.records, className);
    return { ...event, list: { ...list, records } };
  });
  return {
    events: counted.map((event) => fieldOf(event, event.list.records)),
    classes: carClasses(events.flatMap(({ list }) => list.records)),
    ...figuresOf(counted),
  };
}

/** A list that somebody saved in between is not replaced unseen. */
export function refuseUnseen(list: { savedAt: number } | null, replaces: number | null): void {
  if ((list?.savedAt ?? null) === replaces) return;
  throw new AppError(
    'conflict',
    'Someone saved another list for this event since you opened it. Reload the page: what you typed is kept, and the saved list stands below it. Then save again.',
  );
}

/** A published event of the organiser, with the itinerary that holds. */
export async function requireHeld(tx: OrganiserTx, publishedEventId: string): Promise<HeldEvent> {
  const [event] = await listHeldEvents(tx, publishedEventId);
  if (!event) throw unknown();
  return event;
}

function figuresOf(events: readonly HeldEvent[]): RetirementFigures {
  const driven = events.map(
    ({ list, itinerary }) => drivenStretches(list?.records ?? [], itinerary).stretches,
  );
  const broken = driven
    .flat()
    .flatMap(({ stop }) => (stop?.cause === 'mechanical' ? [stop.part.toLowerCase()] : []));
  const counted = pareto(broken);
  return {
    figures: fieldFigures(
      driven.map((stretches) => stretches.map(toFieldStretch)),
      CAUSES,
    ),
    parts: counted.ok ? counted.rows.map(({ cause, count }) => ({ part: cause, count })) : [],
  };
}

function toFieldStretch({ fromMetres, toMetres, stop }: DrivenStretch): FieldStretch {
  return {
    from: fromMetres / METRES_IN_KM,
    to: toMetres / METRES_IN_KM,
    cause: stop === null || stop.cause === 'withdrawn' ? null : stop.cause,
    unsure: stop?.source === 'unsure',
  };
}

function fieldOf(
  { publishedEventId, name, startsOn, itinerary }: HeldEvent,
  records: readonly CarRecord[],
): FieldOfEvent {
  const { leftOut } = drivenStretches(records, itinerary);
  const cars = countCars(records.filter(({ carNumber }) => !leftOut.includes(carNumber)));
  return {
    publishedEventId,
    name,
    startsOn,
    cars,
    leftOut,
    stageKm: stageMetresOf(itinerary) / METRES_IN_KM,
  };
}
