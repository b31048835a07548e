import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type LeavingQuestion, weighLeaving } from './weigh-leaving';

const HANDBRAKE: LeavingQuestion = {
  repair: 'Handbrake',
  doneSeconds: 40,
  leftSeconds: 0,
  stageKm: 20,
  secondsPerKm: 1,
  outChance: 0,
  outSeconds: 1800,
};

describe('weighLeaving', () => {
  it('says for a mechanic where both are equal, and what is better as expected', () => {
    const answer = weighLeaving(HANDBRAKE);
    expect(answer).toMatchObject({ better: 'leave', bySeconds: 20, evenSecondsPerKm: 2 });
    expect(answer.evenOutChance).toBeCloseTo(20 / 1800, 12);
    expect(answer.sentences).toEqual([
      'Handbrake: doing it costs about 40 s in lateness.',
      'Over 20 km of stage, leaving it costs the same if the car loses 2 s per km; you expect 1 s per km.',
      'At that pace it would also be even if leaving it put the car out 1.1 times in 100; you expect 0 times in 100.',
      'By time alone leaving it is better, by about 20 s.',
      "This weighs time only. Whether the car is fit to drive is for qualified people and the event's regulations.",
    ]);
  });

  it('lets a risk decide alone, and a repair that costs no time be done', () => {
    const risky = weighLeaving({ ...HANDBRAKE, outChance: 0.05 });
    expect(risky).toMatchObject({ better: 'do', bySeconds: 70 });
    expect(risky.evenSecondsPerKm).toBeUndefined();
    const free = weighLeaving({ ...HANDBRAKE, doneSeconds: 0 });
    expect(free.sentences[0]).toBe('Handbrake: doing it costs no time at the control.');
    expect(free).toMatchObject({ better: 'do', bySeconds: 20 });
    expect(free.sentences).toHaveLength(3);
  });

  it('is even at its break-even points', () => {
    const numbers = fc.record({
      repair: fc.constant('Repair'),
      doneSeconds: fc.double({ min: 0, max: 500, noNaN: true }),
      leftSeconds: fc.double({ min: 0, max: 500, noNaN: true }),
      stageKm: fc.double({ min: 1, max: 200, noNaN: true }),
      secondsPerKm: fc.double({ min: 0, max: 10, noNaN: true }),
      outChance: fc.double({ min: 0, max: 1, noNaN: true }),
      outSeconds: fc.double({ min: 1, max: 400, noNaN: true }),
    });
    let tried = 0;
    fc.assert(
      fc.property(numbers, (question) => {
        const { evenSecondsPerKm, evenOutChance } = weighLeaving(question);
        if (evenSecondsPerKm !== undefined) {
          tried += 1;
          expect(weighLeaving({ ...question, secondsPerKm: evenSecondsPerKm }).better).toBe('equal');
        }
        if (evenOutChance !== undefined)
          expect(weighLeaving({ ...question, outChance: evenOutChance }).better).toBe('equal');
      }),
    );
    expect(tried).toBeGreaterThan(0);
  });

  it('refuses what can not be', () => {
    expect(() => weighLeaving({ ...HANDBRAKE, outChance: 1.2 })).toThrow('outChance of Handbrake is 1.2');
    expect(() => weighLeaving({ ...HANDBRAKE, stageKm: -1 })).toThrow("can't be");
  });
});
