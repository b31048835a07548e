import type { Conditions } from '@halfshaft/itinerary';
import { type CombinedVerdict, combineVerdicts } from '../combine-verdicts';
import { crewListOutside } from '../crew-list-outside';
import { eventOf } from '../fixtures';
import { fullStarterCards } from '../full-starter/full-starter-cards';
import { outsideServiceIds } from '../full-starter/outside-service-ids';
import { starterTriggers } from '../full-starter/starter-triggers';
import { judgeService } from '../judge-service';
import { type EventQuestion, lastDoneOf } from '../random-events/fixtures';
import { judgeTriggers } from '../triggers/judge-triggers';
import type { Fact } from '../triggers/model';

/*
 * For tests only: an invented event of three days, a four-wheel-drive car on gravel, and what happens to it.
 *
 *   day 1  A 30 min (0-1)    SS1 12 km dark (3)   SS2 8 km dark (5)    B 30 min (6-7)
 *   day 2  C 20 min (8-9)    SS3 18 km (11)       SS4 14 km (13)       D remote 10 min (14-15)
 *                            SS5 18 km wet (17)   SS6 14 km (19)       E 45 min (20-21)
 *   day 3  F 20 min (22-23)  SS7 16 km (25)       SS8 12 km (27)       G 20 min (28-29)
 *                            SS9 20 km (31)       finish (32)
 */
export const EVENT = eventOf([
  { service: 30 },
  { stage: 'SS1', metres: 12_000, road: 20_000 },
  { stage: 'SS2', metres: 8_000, road: 15_000 },
  { service: 30, road: 20_000 },
  { overnight: true },
  { service: 20 },
  { stage: 'SS3', metres: 18_000, road: 30_000 },
  { stage: 'SS4', metres: 14_000, road: 20_000 },
  { service: 10, remote: true, road: 10_000 },
  { stage: 'SS5', metres: 18_000, road: 20_000 },
  { stage: 'SS6', metres: 14_000, road: 20_000 },
  { service: 45, road: 30_000 },
  { overnight: true },
  { service: 20 },
  { stage: 'SS7', metres: 16_000, road: 25_000 },
  { stage: 'SS8', metres: 12_000, road: 20_000 },
  { service: 20, road: 25_000 },
  { stage: 'SS9', metres: 20_000, road: 30_000 },
  { finish: true, road: 20_000 },
]);

const PLANNED = new Map<string, Conditions>([
  ['SS1', { night: 1000, dust: 300 }],
  ['SS2', { night: 1000, dust: 300 }],
  ['SS3', { dust: 600, rough: 400 }],
  ['SS4', { dust: 600, rough: 400 }],
  ['SS5', { water: 500 }],
  ['SS6', { rough: 400 }],
  ['SS7', { dust: 800 }],
  ['SS8', { dust: 800 }],
  ['SS9', { jumps: 500 }],
]);

/** What happens on the way, in the order it is told. */
export const ON_THE_WAY: Fact[] = [
  { kind: 'incident', code: 'ford', pointIndex: 5 },
  { kind: 'incident', code: 'ford', pointIndex: 11 },
  { kind: 'incident', code: 'ford', pointIndex: 13 },
  { kind: 'incident', code: 'softPedal', pointIndex: 13 },
  { kind: 'incident', code: 'puncture', pointIndex: 19 },
  { kind: 'done', cardId: 'starter:wheel-change', pointIndex: 19 },
  { kind: 'incident', code: 'hardLanding', pointIndex: 27 },
];

/** What is done at each service on top of, or left out of, everything that is due there. */
export const AT_SERVICE: Record<string, { alsoDone?: string[]; leftOut?: string[]; repair?: Fact }> = {
  B: {
    repair: {
      kind: 'temporaryRepair',
      cardId: 'starter:under-rear',
      words: 'pipe clip tied with wire',
      pointIndex: 6,
      madeGoodAt: 20,
    },
  },
  E: { alsoDone: ['starter:front-pads'], leftOut: ['starter:differential-oil'] },
};

const cards = fullStarterCards('four', 'gravel');
const triggers = starterTriggers('four', 'gravel');

/** The question of one service, with the log as it stands when it is asked. */
export function askedAt(serviceIndex: number, facts: readonly Fact[]): EventQuestion {
  const here = EVENT.services[serviceIndex]?.inIndex ?? 0;
  return {
    ...EVENT,
    runs: new Map(),
    plannedConditions: PLANNED,
    serviceIndex,
    position: 4,
    cards,
    triggers,
    facts,
    lastDone: new Map(cards.map((card) => [card.id, lastDoneOf(card.id, facts, here, {})])),
  };
}

export function judgedAt(serviceIndex: number, facts: readonly Fact[]): CombinedVerdict[] {
  const question = askedAt(serviceIndex, facts);
  return combineVerdicts({ intervals: judgeService(question), triggers: judgeTriggers(question) });
}

export function crewAt(pointIndex: number, facts: readonly Fact[]): string[] {
  const known = facts.filter((fact) => fact.pointIndex <= pointIndex);
  const question = askedAt(0, known);
  return crewListOutside({
    ...question,
    cards,
    pointIndex,
    lastDone: new Map(cards.map((card) => [card.id, lastDoneOf(card.id, known, pointIndex, {})])),
    doableIds: outsideServiceIds,
  }).map((job) => job.cardId.replace('starter:', ''));
}

/** The whole log, in the order of the route: at each service everything due is done, unless the script says otherwise. */
export function playEvent(): Fact[] {
  const log: Fact[] = [];
  EVENT.services.forEach((service, serviceIndex) => {
    const before = EVENT.services[serviceIndex - 1]?.inIndex ?? -1;
    const happened = ON_THE_WAY.filter(
      (fact) => fact.pointIndex > before && fact.pointIndex <= service.inIndex,
    );
    log.push(...happened);
    const { alsoDone = [], leftOut = [], repair } = AT_SERVICE[service.id] ?? {};
    const done = (cardId: string) => log.push({ kind: 'done', cardId, pointIndex: service.inIndex });
    alsoDone.forEach(done);
    // Twice: what is done makes other work due (wheels off, then nuts).
    for (const _round of [1, 2]) {
      const due = judgedAt(serviceIndex, log).filter(({ verdict }) => verdict === 'doNow');
      for (const { cardId } of due) if (!leftOut.includes(cardId)) done(cardId);
    }
    if (repair !== undefined) log.push(repair);
  });
  log.push(...ON_THE_WAY.filter((fact) => fact.pointIndex > (EVENT.services.at(-1)?.inIndex ?? 0)));
  return log;
}
