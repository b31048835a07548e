import { latenessByService } from '@halfshaft/reliability';
import { describe, expect, it } from 'vitest';
import {
  beyondInWords,
  lateInWords,
  lateShareInWords,
  minutesInWords,
  overrunInWords,
  timesInWords,
} from './lateness-words';

const leave = (lateMinutes: number, overMinutes: number | null = 0) => ({
  carNumber: '7',
  serviceId: 'B',
  lateMinutes,
  overMinutes,
});
const figuresOf = (...leaves: ReturnType<typeof leave>[]) => latenessByService(leaves, 15).all;

describe('lateness in words', () => {
  it('tells how often, by how much, and why', () => {
    const figures = figuresOf(leave(0), leave(2, 2), leave(3, null), leave(16), leave(-1));
    expect(lateInWords(figures)).toBe(
      '3 of 5 times a car left service late: by 3 min in the middle, 16 min at worst.',
    );
    expect(overrunInWords(figures)).toBe(
      'In 1 of these the service itself took too long, by 2 min. 1 brought all of it along from the road. Of 1 nobody can say: the list lacks the clock at the way in or out.',
    );
    expect(beyondInWords(figures, 15)).toBe('1 of these was over the 15 min that the event allows.');
    expect(lateShareInWords({ late: figures.late, of: figures.leaves })).toBe('3 of 5, 60 % (23 to 88)');
    expect(minutesInWords(figures.late)).toBe('3 min, at worst 16');
    expect([timesInWords(figures.late), timesInWords(figures.overran)]).toEqual([
      '3 times, by 3 min, at worst 16',
      'once, by 2 min',
    ]);
  });

  it('has little to say where nobody was late, and nothing of nothing', () => {
    const figures = figuresOf(leave(0), leave(-3));
    expect(lateInWords(figures)).toBe('No car left a service late, in 2 seen.');
    expect([overrunInWords(figures), beyondInWords(figures, 15)]).toEqual([null, null]);
    expect(minutesInWords(figures.late)).toBe('–');
    expect(timesInWords(figures.late)).toBe('–');
    expect(lateInWords(figuresOf())).toBe('No car was seen leaving a service.');
    expect(lateShareInWords({ late: figuresOf().late, of: 0 })).toBe('none seen');
  });
});
