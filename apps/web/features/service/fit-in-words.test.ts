import { describe, expect, it } from 'vitest';
import { fitInWords } from './fit-in-words';

const card = (minutes: number, people = 1, name = 'Nuts') => ({ name, seconds: minutes * 60, people });
/** 20 minutes with two people: 32 person-minutes, 19.2 at 60 %. */
const service = { allowedSeconds: 1200, people: 2 };

describe('fitInWords', () => {
  it('fits at the usual pace, with what is to spare', () => {
    expect(fitInWords({ cards: [card(3, 2), card(10)], ...service })).toEqual([
      'Do-now work needs 16 person-minutes. 2 people have 32, about 19 at the usual pace.',
      'It fits, with 3 to spare.',
    ]);
  });

  it('fits only without waiting when the usual pace is too slow', () => {
    expect(fitInWords({ cards: [card(12, 2)], ...service })[1]).toBe(
      'It fits only if nobody waits: at the usual pace 5 are missing. Do the top of the list first.',
    );
  });

  it('does not fit, and says by how much', () => {
    expect(fitInWords({ cards: [card(10, 2), card(10, 2)], ...service })[1]).toBe(
      'It does not fit: 8 are missing. Find more hands, or decide now what is left.',
    );
  });

  it('rounds work up and cuts time', () => {
    const cards = [{ name: 'Look', seconds: 61, people: 1 }];
    expect(fitInWords({ cards, allowedSeconds: 419, people: 1 })[0]).toBe(
      'Do-now work needs 2 person-minutes. 1 person has 2, about 1 at the usual pace.',
    );
  });

  it('names a card that is longer than the car stands still, or wants more people than there are', () => {
    const [, , tooLong, tooFew, ...more] = fitInWords({
      cards: [card(17, 1, 'Pads'), card(2, 3, 'Gearbox')],
      ...service,
    });
    expect(tooLong).toBe('Pads alone takes 17 min; the car stands still for 16.');
    expect(tooFew).toBe('Gearbox takes 3 people.');
    expect(more).toEqual([]);
  });

  it('has nothing to do without cards', () => {
    expect(fitInWords({ cards: [], ...service })[1]).toBe('Nothing must be done here.');
  });
});
