import type { Counters } from '@halfshaft/lifing';
import type { CardId } from '../model';
import { pointFinder } from '../point-of-place';
import { loggedByCard } from './logged-by-card';
import type { LoggedEvent } from './logged-event';
import { type LifeQuestion, partOfId } from './part-of';
import { type LifeRecord, partRecordsOf } from './part-records';
import { type Halt, LIFE_COUNTERS, wayDriven } from './way-driven';

/** One car over all its events, in the shape of reliability's `CarHistory`. */
export interface CarLives {
  carId: string;
  ranBefore: Partial<Record<string, number>>;
  carried: { cardId: string; position: string | null; age: Partial<Record<string, number>> }[];
  events: {
    eventId: string;
    finished: boolean;
    counted: Record<string, number[]>;
    records: LifeRecord[];
  }[];
}

/** What is known of one car. */
export interface CarLog {
  carId: string;
  /** In the order driven. */
  events: readonly LoggedEvent[];
  /** By card, the wear it brought to the first of them. */
  carried: Readonly<Record<CardId, Partial<Counters>>>;
}

/**
 * The log of one car as reliability asks for it, of the parts that are asked about. It reads no log itself, so that its
 * rules can be tested apart; which word of the log becomes which record stands in its rules.md.
 *
 * @example
 * exposuresOf([carLivesOf(log, questions)], questions)
 */
export function carLivesOf(log: CarLog, questions: readonly LifeQuestion[]): CarLives {
  return {
    carId: log.carId,
    ranBefore: {},
    carried: questions.flatMap((question) => carriedOf(log, question)),
    events: log.events.map((logged) => {
      const pointOf = pointFinder(logged.itinerary);
      const { counted, halts, finished } = wayDriven(logged, pointOf);
      const ofCard = loggedByCard(logged);
      const own = questions.map(({ cardId }) => partOfId(cardId));
      const said = own.flatMap((part) => partRecordsOf(ofCard(part.cardId), part, pointOf));
      return { eventId: logged.eventId, finished, counted, records: [...said, ...halts.map(haltOf)] };
    }),
  };
}

/** Wear brought along says how old a part is only where doing the card means a new one. */
function carriedOf({ carried }: CarLog, question: LifeQuestion): CarLives['carried'] {
  const { cardId, counter, positions, doneRenews } = question;
  const age = carried[cardId]?.[counter];
  if (!doneRenews || age === undefined) return [];
  const places = positions.length > 0 ? positions : [null];
  return places.map((position) => ({ cardId, position, age: { [counter]: age } }));
}

function haltOf(halt: Halt): LifeRecord {
  if (halt.kind === 'restarted') return halt;
  const { cause, cardId } = halt.fact;
  return { kind: 'out', point: halt.point, cause, cardId, position: null, where: 'sinceLastPoint' };
}

/** What a car ran by each counter while its log was kept. */
export function distanceOf({ events }: Pick<CarLives, 'events'>): Record<string, number> {
  const totalOf = (counter: string) =>
    events.reduce((sum, { counted }) => sum + (counted[counter]?.at(-1) ?? 0), 0);
  return Object.fromEntries(LIFE_COUNTERS.map((counter) => [counter, totalOf(counter)]));
}
