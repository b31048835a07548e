import type { CarFact, FactPlace } from '@halfshaft/worklog';

/** One thing the demo's log says of an event before this one: where, and of which starter card. */
export interface SeasonNote {
  at: FactPlace;
  /** A look of a round found out of order, by its place in the round; or what was said of a job's part. */
  said:
    | { kind: 'found'; starterId: string; look: number; position: string | null; words: string }
    | { kind: 'fitted'; starterId: string; position: string; because: 'wornOut' | 'planned' }
    | { kind: 'out'; cause: 'offRoad' };
}

/** An event of the demo's last season; invented like everything here. */
export interface SeasonEvent {
  name: string;
  /** Before the day the demo is loaded. */
  daysBefore: number;
  /** Driven up to and with this stage. */
  lastStage: number;
  notes: SeasonNote[];
}

/** A car that does not start at the demo's own event, so that nothing there depends on what it went through. */
export const SEASON_CAR = {
  key: 'plover',
  name: 'Plover 1600',
  drive: 'front' as const,
  surface: 'gravel' as const,
  carNumber: '44',
  startPosition: 38,
  people: 2,
};

const FRONT = 'starter:front-corners';
const UNDER = 'starter:under-front';
/** Closed at every service, so that what was put right is known to be so at the next. */
export const SEASON_ROUNDS = [FRONT, UNDER];
const at = (serviceId: string): FactPlace => ({ kind: 'service', serviceId });
const found = (
  serviceId: string,
  starterId: string,
  look: number,
  position: string | null,
  words: string,
) => ({
  at: at(serviceId),
  said: { kind: 'found' as const, starterId, look, position, words },
});
const pads = (serviceId: string, because: 'wornOut' | 'planned', ...positions: string[]): SeasonNote[] =>
  positions.map((position) => ({
    at: at(serviceId),
    said: { kind: 'fitted', starterId: 'starter:front-pads', position, because },
  }));

export const SEASON: readonly SeasonEvent[] = [
  {
    name: 'Otter Moss Rally',
    daysBefore: 240,
    lastStage: 9,
    notes: [
      ...pads('A', 'planned', 'FL', 'FR'),
      found('B', FRONT, 0, 'FL', 'Cut through the tread'),
      ...pads('F', 'wornOut', 'FL', 'FR'),
    ],
  },
  {
    name: 'Nab Wood Stages',
    daysBefore: 170,
    lastStage: 5,
    notes: [
      ...pads('B', 'wornOut', 'FL'),
      found('B', UNDER, 0, null, 'Guard: two bolts gone'),
      { at: { kind: 'road', afterStageId: 'SS6' }, said: { kind: 'out', cause: 'offRoad' } },
    ],
  },
  {
    name: 'Quarry Bank Rally',
    daysBefore: 100,
    lastStage: 9,
    notes: [
      ...pads('A', 'wornOut', 'FR'),
      found('B', UNDER, 0, null, 'Guard: bolt gone at the front'),
      ...pads('D', 'wornOut', 'FL'),
      found('E', UNDER, 0, null, 'Guard: bolt gone, thread torn'),
    ],
  },
  {
    name: 'Great Coppice Stages',
    daysBefore: 40,
    lastStage: 9,
    notes: [
      ...pads('B', 'wornOut', 'FL', 'FR'),
      found('B', FRONT, 1, 'FR', 'Rim bent inside'),
      found('D', UNDER, 0, null, 'Guard: crack at the rear edge'),
      found('F', UNDER, 0, null, 'Guard: bolt gone again'),
    ],
  },
];

/** A note as the fact it is; null for what was found, which belongs to a task. */
export function factOf({ said }: SeasonNote, cardIdOf: (starterId: string) => string): CarFact | null {
  if (said.kind === 'found') return null;
  if (said.kind === 'out') return { kind: 'out', forDay: false, cause: said.cause, cardId: null, words: '' };
  const { starterId, position, because } = said;
  return { kind: 'fitted', cardId: cardIdOf(starterId), position, because, words: '' };
}
