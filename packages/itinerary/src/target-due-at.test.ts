import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from './fixtures';
import { type ActualTime, targetDueAt } from './target-due-at';

const itinerary = goodItinerary(TWO_LEGS);
const fromFinish = { ...itinerary, roadTimedFrom: 'stageFinish' as const };
const indexOf = (id: string) => itinerary.points.findIndex((point) => point.id === id);
const planned = (id: string) => itinerary.points[indexOf(id)]?.firstCarAt ?? 0;
const actual = (times: Record<string, ActualTime>) => new Map(Object.entries(times));

describe('targetDueAt', () => {
  it('is the actual time at the control before plus the target time', () => {
    const late = actual({ TC0: { at: planned('TC0') + 420 } });
    // A refuel on the way is not timed.
    expect(targetDueAt(itinerary, indexOf('TC1'), late)).toBe(planned('TC1') + 420);
  });

  it('counts from the start of a stage, minutes cut', () => {
    const start = planned('SS1') + 150;
    expect(targetDueAt(itinerary, indexOf('TC2'), actual({ SS1: { at: start } }))).toBe(planned('TC2') + 120);
  });

  it('counts from the start the control gave where none is written yet', () => {
    const due = targetDueAt(itinerary, indexOf('TC2'), actual({ TC1: { at: planned('TC1') + 300 } }));
    expect(due).toBe(planned('TC2') + 300);
  });

  it('counts from the finish where the itinerary says so, and waits for it', () => {
    const at = planned('SS1');
    expect(targetDueAt(fromFinish, indexOf('TC2'), actual({ SS1: { at } }))).toBeNull();
    const due = targetDueAt(fromFinish, indexOf('TC2'), actual({ SS1: { at, finishedAt: at + 479 } }));
    expect(due).toBe(at + 7 * 60 + 28 * 60);
  });

  it('is the start of a stage by its gap', () => {
    expect(targetDueAt(itinerary, indexOf('SS2'), actual({ TC2: { at: planned('TC2') + 61 } }))).toBe(
      planned('SS2') + 60,
    );
  });

  it('is unknown without the time before or without a target time', () => {
    expect(targetDueAt(itinerary, indexOf('TC1'), actual({}))).toBeNull();
    expect(targetDueAt(itinerary, 0, actual({ TC0: { at: planned('TC0') } }))).toBeNull();
    expect(targetDueAt(itinerary, indexOf('TC4E'), actual({ TC4D: { at: planned('TC4D') } }))).toBeNull();
  });

  it('throws a sentence on a point that is none', () => {
    expect(() => targetDueAt(itinerary, 99, actual({}))).toThrow(/^targetDueAt: 99 is no point/);
  });
});
