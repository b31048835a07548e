import type { CarFact, FactPlace, RecordedFact } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { findVisit } from '../service/visit';
import { CAR, MIA, replicaOf, SMALL_ITINERARY } from '../work/fixtures';
import { outAt } from './out-at';

// Service A lies between SS1 and SS2, Service B after SS2. In the longer event Service B belongs to a second leg.
const short = replicaOf();
const points = SMALL_ITINERARY.points.map((point, index) => (index < 4 ? point : { ...point, leg: 2 }));
const long = replicaOf(MIA, { itinerary: { ...SMALL_ITINERARY, points } });
const BACK: CarFact = { kind: 'restarted', words: '' };
const out = (forDay: boolean): CarFact => ({
  kind: 'out',
  forDay,
  cause: 'mechanical',
  cardId: null,
  words: '',
});
const after = (afterStageId: string | null): FactPlace => ({ kind: 'road', afterStageId });

function sinceAt(replica: typeof short, letter: string, ...facts: [CarFact, FactPlace][]) {
  const recorded = facts.map(([fact, at], index): [string, RecordedFact] => [
    String(index),
    {
      ...{ factId: String(index), entryId: CAR, fact, at, withdrawn: false },
      ...{ changedSeq: index + 1, recordedBy: MIA, changedBy: MIA },
    },
  ]);
  const visit = findVisit(replica, CAR, letter);
  if (!visit) throw new Error(`no Service ${letter} in the fixture`);
  const found = outAt(replica, { facts: new Map(recorded) }, visit);
  return found === null ? null : (found.since?.id ?? 'start');
}

describe('outAt', () => {
  it('holds from the place on, not before', () => {
    expect(sinceAt(short, 'A', [out(false), after('SS2')])).toBeNull();
    expect(sinceAt(short, 'B', [out(false), after('SS2')])).toBe('SS2');
    expect(sinceAt(short, 'A', [out(false), after('SS1')])).toBe('SS1');
    expect(sinceAt(short, 'A', [out(false), after(null)])).toBe('start');
    expect(sinceAt(short, 'A', [out(false), { kind: 'service', serviceId: 'A' }])).toBe('A');
    expect(sinceAt(short, 'A', [out(false), { kind: 'service', serviceId: 'B' }])).toBeNull();
  });

  it('ends with the leg for a car that is out for the day, and never for one that is out for good', () => {
    expect(sinceAt(long, 'A', [out(true), after('SS1')])).toBe('SS1');
    expect(sinceAt(long, 'B', [out(true), after('SS1')])).toBeNull();
    expect(sinceAt(long, 'B', [out(false), after('SS1')])).toBe('SS1');
  });

  it('is over once the car starts again', () => {
    expect(sinceAt(short, 'B', [out(true), after('SS1')], [BACK, after('SS1')])).toBeNull();
    expect(sinceAt(short, 'B')).toBeNull();
  });

  it('holds everywhere when a bulletin took the stage away', () => {
    expect(sinceAt(short, 'A', [out(false), after('SS9')])).toBe('SS9');
  });
});
