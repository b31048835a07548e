import { latenessByControl } from '@halfshaft/reliability';
import { describe, expect, it } from 'vitest';
import {
  atControlInWords,
  comesLateInWords,
  inTimeInWords,
  knownTimesInWords,
  lostInWords,
} from './control-words';

const arrival = (
  lateMinutes: number,
  lostMinutes: number | null = 0,
  totalMinutes: number | null = lateMinutes,
) => ({ carNumber: '7', controlId: 'TC2', lateMinutes, lostMinutes, totalMinutes });
const figuresOf = (...arrivals: ReturnType<typeof arrival>[]) => latenessByControl(arrivals, 15).all;

describe('lateness at controls in words', () => {
  it('tells how often, by how much, and where it was lost', () => {
    const figures = figuresOf(arrival(0), arrival(2, 2), arrival(3, null, null), arrival(16, 0), arrival(-1));
    expect(comesLateInWords(figures)).toBe(
      '3 of 5 times a car came late: by 3 min in the middle, 16 min at worst.',
    );
    expect(lostInWords(figures)).toBe(
      'In 1 of these minutes were lost on the way there, by 2 min. 1 brought all of it along from before. Of 1 nobody can say: the list lacks the clock there or at the control before. On reaching one of them a car had lost at most 16 min in all.',
    );
    expect(atControlInWords(figures)).toBe('3 of 5 late: 3 min, at worst 16');
    expect(knownTimesInWords(figures.lost)).toBe('once, by 2 min; of 1 not known');
    expect(knownTimesInWords(figuresOf(arrival(3, null)).lost)).toBe('not known');
    expect(knownTimesInWords(figuresOf(arrival(3, 3)).lost)).toBe('once, by 3 min');
  });

  it('has little to say where nobody was late, and nothing of nothing', () => {
    const figures = figuresOf(arrival(0), arrival(-3));
    expect(comesLateInWords(figures)).toBe('No car came late, in 2 times seen.');
    expect([lostInWords(figures), inTimeInWords([])]).toEqual([null, null]);
    expect(comesLateInWords(figuresOf())).toBe('No car was seen at any other control.');
    expect(inTimeInWords(['TC1', 'TC3'])).toBe('Nobody came late to TC1, TC3.');
  });
});
