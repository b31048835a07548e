import type { Itinerary, ServiceId } from '@halfshaft/itinerary';
import type { RecordedFact } from '../car-fact';
import type { CardId, ControlTime, EntryId, Finding, StageConfirmation } from '../model';
import type { WorkState } from '../state';

/**
 * What the log of one event says of one car, less everything that says nothing of how far parts ran and how they ended.
 * A server may gather it from the projections without reading the log.
 */
export interface LoggedEvent {
  eventId: string;
  itinerary: Itinerary;
  /** The event has run to its end, so a car that is not there by now did not finish. */
  isOver: boolean;
  stages: readonly Pick<StageConfirmation, 'stageId' | 'driven'>[];
  times: readonly Pick<ControlTime, 'controlId' | 'finish'>[];
  /** Services at which any work on the car is done. */
  workedAt: readonly ServiceId[];
  /** Cards that are done. */
  done: readonly DoneCard[];
  /** Those that stand, of the kinds in `LIFE_FACT_KINDS`. */
  facts: readonly RecordedFact[];
}

export interface DoneCard {
  serviceId: ServiceId;
  cardId: CardId;
  findings: readonly Finding[];
}

/** The facts that say something of a part's life or of the car's way. */
export const LIFE_FACT_KINDS = [
  'incident',
  'fitted',
  'modified',
  'madeGood',
  'prepared',
  'out',
  'restarted',
] as const;
const LIFE_KINDS: ReadonlySet<string> = new Set(LIFE_FACT_KINDS);

/**
 * The same of the whole state of an event, for one of its cars.
 *
 * @example
 * loggedEventOf(state, { eventId, itinerary, isOver: true }, entryId).workedAt // ['A', 'B']
 */
export function loggedEventOf(
  state: WorkState,
  event: Pick<LoggedEvent, 'eventId' | 'itinerary' | 'isOver'>,
  entryId: EntryId,
): LoggedEvent {
  const ofCar = <Row extends { entryId: EntryId }>(rows: Iterable<Row>) =>
    [...rows].filter((row) => row.entryId === entryId);
  const closed = [...state.tasks.values()].filter(
    (task) => task.ref.entryId === entryId && task.state === 'done',
  );
  return {
    ...event,
    stages: ofCar(state.stages.values()),
    times: ofCar(state.times.values()),
    workedAt: [...new Set(closed.map(({ ref }) => ref.serviceId))],
    done: closed.flatMap(({ ref: { serviceId, source }, findings }) =>
      source.kind === 'card' ? [{ serviceId, cardId: source.cardId, findings }] : [],
    ),
    facts: ofCar(state.facts.values()).filter(
      ({ fact, withdrawn }) => !withdrawn && LIFE_KINDS.has(fact.kind),
    ),
  };
}
