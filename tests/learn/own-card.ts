import type { CardBody } from '@halfshaft/contract';
import type { ActionBody, CarFact, FactPlace } from '@halfshaft/worklog';
import type { TeamAtEvent } from '../support/event';
import { close, driven, type Entered, enterAgain, found, record } from './log-steps';

export type NewCard = CardBody;

/** A card no starter set has. */
export const BRACKET: NewCard = {
  ...{ kind: 'job', starterId: null, name: 'Alternator bracket: renew', place: 'engineBay' },
  intervals: [{ counter: 'stageMetres', every: 60_000, tolerance: 0 }],
  ...{ dateLimit: null, conditionFactors: {}, combineConditions: 'largest' },
  ...{ seconds: 2400, people: 1, leastServiceSeconds: 0, remoteAllowed: true, fitsNewPart: true },
  ...{ looks: [], readings: [], needsSignature: false, caution: '', tools: [], instruction: '' },
};

/** Driven when the car arrives at Service A, B, D and F of the fixture's itinerary and in all, in metres as printed in it. */
const AT = { A: 18_650, B: 37_300, D: 63_500, F: 94_150 };
const ALL = 107_900;

const BEFORE_START: FactPlace = { kind: 'road', afterStageId: null };

/**
 * Two events: new at home; worn out at B; found at F, when the card was done again. Worn out at A and at D; still good at
 * F, when the card was done.
 */
export async function bracketEvents(
  team: TeamAtEvent,
  cardId: string,
): Promise<{ entered: Entered; bodies: ActionBody[] }[]> {
  const second = await enterAgain(team, '2026-07-11');
  const worn: CarFact = { kind: 'fitted', cardId, position: null, words: '', because: 'wornOut' };
  const wornAt = (entered: Entered, serviceId: string) =>
    record(entered, { kind: 'service', serviceId }, worn);
  const stages = [1, 2, 3, 4, 5, 6, 7, 8, 9];
  const first = [
    ...driven(team, ...stages),
    record(team, BEFORE_START, { kind: 'prepared', cardIds: [cardId] }),
    ...[wornAt(team, 'B'), close(team, cardId, 'F', [found('needsWork', null, null)])],
  ];
  const next = [
    ...driven(second, ...stages),
    ...[wornAt(second, 'A'), wornAt(second, 'D'), close(second, cardId, 'F')],
  ];
  return [
    { entered: team, bodies: first },
    { entered: second, bodies: next },
  ];
}

/** What became of each bracket, worked by hand from the distances above. */
export const bracketLives = {
  failedAt: [AT.B, AT.F, ALL + AT.A, ALL + AT.D],
  observations: [
    { kind: 'failedAt', distance: AT.B },
    // Nobody had looked at it since it was new.
    { kind: 'failedBefore', distance: AT.F - AT.B },
    { kind: 'failedAt', distance: ALL - AT.F + AT.A },
    { kind: 'failedAt', distance: AT.D - AT.A },
    { kind: 'goodAt', distance: AT.F - AT.D },
    { kind: 'goodAt', distance: ALL - AT.F },
  ],
  longestFailed: AT.F - AT.B,
} as const;
