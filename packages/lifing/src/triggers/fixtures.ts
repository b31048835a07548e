import type { Conditions, StageRun } from '@halfshaft/itinerary';
import { cardWith, eventOf } from '../fixtures';
import type { LifingCard } from '../model';
import type { Fact, Trigger } from './model';
import type { TriggersQuestion } from './questions';

/** For tests only: two days, a remote service of ten minutes in the first, and cards of every kind of trigger. */

/*
 * Points: A 0-1, SS1 3, SS2 5, B (remote, 10 min) 6-7, SS3 9, SS4 11, C (30 min) 12-13, SS5 15,
 * next day D 16-17, SS6 19, SS7 21, E 22-23, SS8 25, finish 26.
 */
export function twoDays() {
  return eventOf([
    { service: 20 },
    { stage: 'SS1', metres: 16_000, road: 10_000 },
    { stage: 'SS2', metres: 8_000, road: 10_000 },
    { service: 10, remote: true, road: 10_000 },
    { stage: 'SS3', metres: 16_000, road: 10_000 },
    { stage: 'SS4', metres: 8_000, road: 10_000 },
    { service: 30, road: 10_000 },
    { stage: 'SS5', metres: 12_000, road: 10_000 },
    { overnight: true },
    { service: 20, road: 10_000 },
    { stage: 'SS6', metres: 16_000, road: 10_000 },
    { stage: 'SS7', metres: 8_000, road: 10_000 },
    { service: 20, road: 10_000 },
    { stage: 'SS8', metres: 20_000, road: 10_000 },
    { finish: true, road: 10_000 },
  ]);
}

export const SERVICES = { A: 0, B: 1, C: 2, D: 3, E: 4 };
export const POINTS = {
  atA: 0,
  SS1: 3,
  SS2: 5,
  atB: 6,
  SS3: 9,
  SS4: 11,
  atC: 12,
  SS5: 15,
  atD: 16,
  SS6: 19,
  SS7: 21,
  atE: 22,
  SS8: 25,
};

const LONG = { leastServiceSeconds: 1200, remoteAllowed: false };

export const CARDS: LifingCard[] = [
  cardWith({ id: 'look', name: 'Look it over' }),
  cardWith({ id: 'bleed', name: 'Bleed the brakes', ...LONG }),
  cardWith({ id: 'pads', name: 'Change the pads', ...LONG }),
  cardWith({ id: 'nuts', name: 'Wheel nuts' }),
  cardWith({ id: 'nuts-again', name: 'Wheel nuts again' }),
  cardWith({ id: 'new-look', name: 'Look at the new part' }),
  cardWith({ id: 'lamps-on', name: 'Lamps on', ...LONG }),
  cardWith({ id: 'lamps-off', name: 'Lamps off' }),
  cardWith({ id: 'wet', name: 'Wet tyres' }),
  cardWith({ id: 'dry', name: 'Dry tyres' }),
  cardWith({ id: 'under', name: 'Under the car' }),
];

export const TRIGGERS: Trigger[] = [
  { kind: 'incident', id: 'off', codes: ['off', 'contact'], times: 1, cardIds: ['look'] },
  { kind: 'incident', id: 'soft', codes: ['softPedal'], times: 1, cardIds: ['bleed'] },
  { kind: 'incident', id: 'fords', codes: ['ford'], times: 2, cardIds: ['under'] },
  { kind: 'jobDone', id: 'nuts', afterCardIds: ['pads', 'bleed'], cardIds: ['nuts'], where: 'service' },
  { kind: 'jobDone', id: 'halt', afterCardIds: ['pads'], cardIds: ['nuts-again'], where: 'firstHalt' },
  {
    kind: 'nextConditions',
    id: 'dark',
    condition: 'night',
    least: 1,
    onCardIds: ['lamps-on'],
    offCardIds: ['lamps-off'],
    offWhen: 'noneLeft',
  },
  {
    kind: 'nextConditions',
    id: 'rain',
    condition: 'water',
    least: 300,
    onCardIds: ['wet'],
    offCardIds: ['dry'],
    offWhen: 'noneBeforeNextChance',
  },
  { kind: 'newlyFitted', id: 'new', fittedCardIds: ['pads'], afterStages: 1, cardIds: ['new-look'] },
  { kind: 'temporaryRepair', id: 'repair', cardIds: [] },
];

export interface Situation {
  facts?: Fact[];
  dark?: string[];
  wet?: string[];
  notDriven?: string[];
  confirmedDry?: string[];
}

export function triggersQuestion(
  service: keyof typeof SERVICES,
  { facts = [], dark = [], wet = [], notDriven = [], confirmedDry = [] }: Situation,
): TriggersQuestion {
  const planned = new Map<string, Conditions>();
  const plan = (id: string, own: Conditions) => planned.set(id, { ...planned.get(id), ...own });
  for (const id of dark) plan(id, { night: 1000 });
  for (const id of wet) plan(id, { water: 500 });
  const runs = new Map<string, StageRun>([
    ...notDriven.map((id): [string, StageRun] => [id, { stageId: id, driven: false, conditions: {} }]),
    ...confirmedDry.map((id): [string, StageRun] => [id, { stageId: id, driven: true, conditions: {} }]),
  ]);
  return {
    ...twoDays(),
    runs,
    plannedConditions: planned,
    serviceIndex: SERVICES[service],
    position: 1,
    cards: CARDS,
    triggers: TRIGGERS,
    facts,
  };
}

export const incident = (code: Extract<Fact, { kind: 'incident' }>['code'], pointIndex: number): Fact => ({
  kind: 'incident',
  code,
  pointIndex,
});
export const done = (cardId: string, pointIndex: number): Fact => ({ kind: 'done', cardId, pointIndex });
export const fitted = (cardId: string, pointIndex: number): Fact => ({ kind: 'fitted', cardId, pointIndex });
export const repair = (cardId: string, pointIndex: number, madeGoodAt: number | null = null): Fact => ({
  kind: 'temporaryRepair',
  cardId,
  words: 'wire round the hanger',
  pointIndex,
  madeGoodAt,
});
