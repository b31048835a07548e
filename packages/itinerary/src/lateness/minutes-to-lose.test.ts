import { describe, expect, it } from 'vitest';
import { goodItinerary, TWO_LEGS } from '../fixtures';
import type { TimeRecord } from './lateness-question';
import { minutesToLose } from './minutes-to-lose';
import { DEFAULT_PENALTY_RULES, type PenaltyRules } from './penalty-rules';

const itinerary = goodItinerary(TWO_LEGS);

function ask(late: Record<string, number>, rules: PenaltyRules = DEFAULT_PENALTY_RULES) {
  const records = Object.entries(late).map(([id, minutes]): TimeRecord => {
    const pointIndex = itinerary.points.findIndex((point) => point.id === id);
    return { pointIndex, writtenAt: (itinerary.points[pointIndex]?.firstCarAt ?? 0) + minutes * 60 };
  });
  const stretches = minutesToLose({ itinerary, positions: new Map([[1, 1]]), rules, records });
  return stretches.map(({ section, minutes, atOneControl, limitedBy, resetsAt, fromIndex, toIndex }) => [
    `${section}: ${itinerary.points[fromIndex]?.id} to ${itinerary.points[toIndex]?.id}`,
    minutes,
    atOneControl,
    limitedBy,
    resetsAt && `${resetsAt.kind} ${resetsAt.id}`,
  ]);
}

describe('minutesToLose', () => {
  it('is the whole maximum for each stretch before anything is written', () => {
    expect(ask({})).toEqual([
      ['1: TC0 to TC4A', 30, 15, 'inTotal', 'regroup TC4B'],
      ['2: TC4B to TC4D', 30, 15, 'inTotal', 'leg TC4E'],
      ['3: TC4E to TC6A', 30, 15, 'inTotal', 'regroup TC6B'],
      ['4: TC6B to TC7A', 30, 15, 'inTotal', null],
    ]);
  });

  it('is less by what is counted, up to the reset and no further', () => {
    expect(ask({ TC1: 12 }).slice(0, 2)).toEqual([
      ['1: SS1 to TC4A', 18, 15, 'inTotal', 'regroup TC4B'],
      ['2: TC4B to TC4D', 30, 15, 'inTotal', 'leg TC4E'],
    ]);
    expect(ask({ TC1: 12, TC2: 20 })[0]?.slice(1, 3)).toEqual([10, 10]);
    expect(ask({ TC1: 40 })[0]?.[1]).toBe(0);
  });

  it('goes on through sections where nothing is reset', () => {
    const rules = { ...DEFAULT_PENALTY_RULES, resetsAt: ['leg' as const] };
    expect(ask({ TC1: 12 }, rules).map((stretch) => [stretch[1], stretch[4]])).toEqual([
      [18, 'leg TC4E'],
      [18, 'leg TC4E'],
      [30, null],
      [30, null],
    ]);
  });

  it('is cut at a service out inside a section', () => {
    const rules = {
      ...DEFAULT_PENALTY_RULES,
      resetsAt: ['serviceOut' as const],
      maxLateMinutesInSection: 20,
    };
    expect(ask({ TC1: 12 }, rules).slice(0, 3)).toEqual([
      ['1: SS1 to TC2A', 8, 8, 'inSection', 'serviceOut TC2B'],
      ['1: TC2B to TC4A', 8, 8, 'inSection', 'serviceOut TC4C'],
      ['2: TC4B to TC4B', 20, 15, 'inSection', 'serviceOut TC4C'],
    ]);
  });

  it('begins anew behind a main control that was reached', () => {
    const rules = { ...DEFAULT_PENALTY_RULES, resetsAt: ['mainControl' as const], mainControls: ['TC2'] };
    expect(ask({ TC1: 12 }, rules).slice(0, 2)).toEqual([
      ['1: SS1 to TC2', 18, 15, 'inTotal', 'mainControl TC2'],
      ['1: SS2 to TC4A', 30, 15, 'inTotal', null],
    ]);
    expect(ask({ TC1: 12, TC2: 12 }, rules)[0]?.[1]).toBe(30);
  });

  it('is nothing to count where there is no maximum', () => {
    const rules = { ...DEFAULT_PENALTY_RULES, maxLateMinutesInTotal: null, maxLateMinutesAtControl: null };
    expect(ask({}, rules)[0]?.slice(1, 4)).toEqual([null, null, null]);
  });
});
