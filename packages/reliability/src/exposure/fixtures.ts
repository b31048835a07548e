import type { CarHistory, PartQuestion, PartRecord, WatchedEvent } from './car-history';
import type { Exposure } from './exposure';

/** Front pads: two places, a look does not change them, and a failure can hide until somebody looks. */
export const PADS: PartQuestion = {
  cardId: 'pads',
  positions: ['FL', 'FR'],
  counter: 'stageMetres',
  doneRenews: false,
  shows: 'whenLooked',
};

/** A belt: one place, and a failure is felt at once. */
export const BELT: PartQuestion = { ...PADS, cardId: 'belt', positions: [], shows: 'atOnce' };

/** Six points, 10 apart. */
export function eventOf(records: readonly PartRecord[], event: Partial<WatchedEvent> = {}): WatchedEvent {
  return {
    eventId: 'larchwater',
    finished: true,
    counted: { stageMetres: [0, 10, 20, 30, 40, 50] },
    records,
    ...event,
  };
}

/** A car whose parts were all new at the start. */
export function carOf(events: readonly WatchedEvent[], car: Partial<CarHistory> = {}): CarHistory {
  const carried = [
    { cardId: 'pads', position: 'FL', age: { stageMetres: 0 } },
    { cardId: 'pads', position: 'FR', age: { stageMetres: 0 } },
    { cardId: 'belt', position: null, age: { stageMetres: 0 } },
  ];
  return { carId: 'car 12', ranBefore: {}, carried, events, ...car };
}

/** One line an exposure: "FL 1.0 new@0 0..20 good 10 failed" for part 1 of design 0. */
export function inLine({
  position,
  part,
  design,
  origin,
  entryAge,
  from,
  to,
  goodTo,
  ending,
}: Exposure): string {
  return `${position ?? '-'} ${part}.${design} ${origin}@${entryAge ?? '?'} ${from}..${to} good ${goodTo} ${ending}`;
}

export function lookAt(
  point: number,
  ...findings: ['ok' | 'watch' | 'needsWork' | 'temporaryRepair', string | null][]
) {
  return {
    kind: 'closed' as const,
    cardId: 'pads',
    point,
    findings: findings.map(([grade, position]) => ({ grade, position })),
  };
}

/** A look for whose findings a new part went on. */
export function changedAt(...look: Parameters<typeof lookAt>) {
  const closed = lookAt(...look);
  return { ...closed, findings: closed.findings.map((finding) => ({ ...finding, newPart: true as const })) };
}
