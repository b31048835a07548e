import type { CarOutline, CarRow, PartOutline, ReliabilityOfTeam } from '@halfshaft/contract';
import {
  type CarHistory,
  exposuresOf,
  failuresOf,
  historiesByCard,
  observationsOf,
} from '@halfshaft/reliability';
import type { MemberTx } from '@halfshaft/store';
import {
  carLivesOf,
  distanceOf,
  failedPartsOf,
  type LifeQuestion,
  type LoggedEvent,
  lifeQuestionOf,
  type WatchedPart,
} from '@halfshaft/worklog';
import { notAllowed } from '../../errors';
import { mayManage } from '../people/ability';
import {
  countSnags,
  type EntryOfLives,
  type EventOfLives,
  type FailingCard,
  findCards,
  listCarsWithCards,
  listEntriesOfLives,
  listEventsOfLives,
} from './data';

/** After the first car was due at the last point: the others follow, and nothing more is to be expected. */
const OVER_AFTER_SECONDS = 24 * 60 * 60;
const MILLIS = 1000;

/** What failed on each car of the team, how often and after how long, over all its events. For managers. */
export async function reliabilityOfTeam(tx: MemberTx, now: number): Promise<ReliabilityOfTeam> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const events = await listEventsOfLives(tx);
  const entries = await listEntriesOfLives(tx);
  const cars = await listCarsWithCards(tx);
  const snags = await countSnags(tx);
  const logs = new Map(cars.map(({ car }) => [car.carId, logOfCar(car, events, entries, now)]));
  const failed = [...logs.values()].flatMap((log) => failedPartsOf(log.events));
  const cards = await findCards(tx, [...new Set(failed.map(({ cardId }) => cardId))]);
  const outlines = cars.map(({ car, cards: inUse }): CarOutline => {
    const log = logs.get(car.carId) ?? logOfCar(car, [], [], now);
    const ownCards = cards.filter(({ carId }) => carId === car.carId);
    const { parts, lives } = partsOf(log, ownCards);
    const unsound = new Set(parts.filter(({ removed }) => !removed).map(({ cardId }) => cardId));
    return {
      ...{ carId: car.carId, name: car.name, parts },
      stageMetres: distanceOf(lives).stageMetres ?? 0,
      events: log.events.length,
      soundCards: inUse - unsound.size,
      snags: snags.filter(({ carId }) => carId === car.carId).map(({ place, times }) => ({ place, times })),
    };
  });
  const named = events.map(({ eventId, name, startsOn }) => ({ eventId, name, startsOn }));
  return { cars: outlines, events: named };
}

interface LogOfCar {
  carId: string;
  events: LoggedEvent[];
  carried: EntryOfLives['carried'];
}

function logOfCar(
  { carId }: CarRow,
  events: readonly EventOfLives[],
  entries: readonly EntryOfLives[],
  now: number,
): LogOfCar {
  const own = new Map(
    entries.filter((entry) => entry.carId === carId).map((entry) => [entry.eventId, entry]),
  );
  const driven = events.flatMap((event) => {
    const entry = own.get(event.eventId);
    return entry ? [{ event, entry }] : [];
  });
  return {
    carId,
    events: driven.map(({ event, entry }) => ({ ...entry, ...event, isOver: isOver(event, now) })),
    carried: driven[0]?.entry.carried ?? {},
  };
}

function isOver({ itinerary, clockOffsetSeconds }: EventOfLives, now: number): boolean {
  const last = itinerary.points.at(-1)?.firstCarAt ?? 0;
  return now / MILLIS + clockOffsetSeconds > last + OVER_AFTER_SECONDS;
}

function partsOf(log: LogOfCar, cards: readonly FailingCard[]) {
  const asked = failedPartsOf(log.events).flatMap((part) => {
    const known = cards.find(({ card }) => card.id === part.cardId);
    if (!known) return [];
    return [{ part, known, question: lifeQuestionOf(known.card, part) }];
  });
  const lives: CarHistory & ReturnType<typeof carLivesOf> = carLivesOf(
    log,
    asked.map(({ question }) => question),
  );
  const historyOf = historiesByCard(lives);
  const watched = distanceOf(lives);
  const parts = asked.map(({ part, known, question }) =>
    outlineOf(part, known, question, { watched, history: historyOf(question.cardId) }),
  );
  return { parts: parts.filter(({ failures }) => failures.length > 0), lives };
}

function outlineOf(
  part: WatchedPart,
  { card, removed }: FailingCard,
  question: LifeQuestion,
  { watched, history }: { watched: ReturnType<typeof distanceOf>; history: CarHistory },
): PartOutline {
  const { counter, doneRenews } = question;
  const look = card.looks.find(({ id }) => id === part.lookId);
  return {
    ...{ partId: question.cardId, cardId: card.id, removed, counter, renews: doneRenews },
    name: look?.words ?? card.name,
    roundName: look ? card.name : null,
    place: card.place,
    every: card.intervals.find((interval) => interval.counter === counter)?.every ?? null,
    watched: watched[counter] ?? 0,
    failures: failuresOf(history, question).map(({ at, spot, position }) => ({
      ...{ at, position },
      eventId: spot.eventId,
    })),
    lives: observationsOf(exposuresOf([history], [question])),
  };
}
