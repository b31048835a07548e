import type { TyrePlace, TyreUse } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { allowanceInWords } from './allowance-in-words';
import { moveTyre } from './move-tyre';

function tyre(tyreId: string, place: TyrePlace, used = true): TyreUse {
  const nothing = { stages: 0, stageMetres: 0, tread: null, cold: null, hot: null };
  return { tyreId, mark: tyreId, compound: '', place, used, ...nothing };
}

const TYRES = [tyre('L1', 'FL'), tyre('L2', 'FR'), tyre('S1', 'spare1'), tyre('N1', 'service', false)];
const moves = (tyreId: string, place: TyrePlace, tyres = TYRES) =>
  moveTyre(tyres, tyreId, place).map((fact) => `${fact.mark} ${fact.place}`);

describe('moveTyre', () => {
  it('puts the tyre there, and the one before it where it came from', () => {
    expect(moves('S1', 'FL')).toEqual(['S1 FL', 'L1 spare1']);
    expect(moves('L1', 'FR')).toEqual(['L1 FR', 'L2 FL']);
    expect(moves('N1', 'FL')).toEqual(['N1 FL', 'L1 service']);
  });

  it('moves one alone to an empty place and to those that hold many', () => {
    expect(moves('L1', 'RL')).toEqual(['L1 RL']);
    expect(moves('L1', 'service')).toEqual(['L1 service']);
  });

  it('gives up no good tyre when one given up comes back', () => {
    expect(moves('X', 'FL', [...TYRES, tyre('X', 'scrapped')])).toEqual(['X FL', 'L1 service']);
  });

  it('records nothing for a tyre that is there already or not known', () => {
    expect(moves('L1', 'FL')).toEqual([]);
    expect(moves('nobody', 'FL')).toEqual([]);
  });
});

describe('allowanceInWords', () => {
  it('counts what was on the car or carried, against the allowance', () => {
    expect(allowanceInWords(TYRES, 8)).toBe(
      '3 of 8 tyres used, 5 left. The event’s regulations say what counts.',
    );
    expect(allowanceInWords(TYRES, 2)).toBe(
      '3 of 2 tyres used, 1 too many. The event’s regulations say what counts.',
    );
    expect(allowanceInWords([tyre('L1', 'FL')], null)).toBe('1 tyre used; no allowance is set.');
  });
});
