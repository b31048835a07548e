import { fullStarterCards, starterCards } from '@halfshaft/lifing';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { debriefLines, offersOfLine } from './offers-of-line';
import { CARD_WORDS } from './vocabulary';

const CARDS = fullStarterCards('front', 'gravel').map((card) => ({ ...card, starterId: card.id }));
const idsOf = (cards: readonly { id: string }[]) => cards.map(({ id }) => id);

/** In a few words: what each offer would be taken down as. */
function gist(line: string): string[] {
  return offersOfLine(line, CARDS).map((offer) => {
    if (offer.kind === 'incident') return `${offer.code} ${offer.place ?? 'anywhere'}`;
    return offer.kind === 'look' ? `look ${offer.cardId} ${offer.place}` : `snag ${offer.place}`;
  });
}

// What crews say is common practice, no source.
describe('offersOfLine', () => {
  it('finds the corner, what happened and the cards that look at it', () => {
    expect(gist('Vibration from the LEFT-REAR after SS4')).toEqual([
      'look starter:wheel-nuts rearLeft',
      'look starter:hub-play rearLeft',
      'snag rearLeft',
    ]);
    expect(gist('soft pedal at the end')).toEqual([
      'softPedal cockpit',
      'look starter:bleed-brakes cockpit',
      'snag cockpit',
    ]);
    expect(gist('took the ford too fast')).toEqual(['ford anywhere', 'snag wholeCar']);
  });

  it('takes whole words where a longer one means something else', () => {
    expect(gist('we can afford a hotel, photo of the Fordham start')).toEqual(['snag wholeCar']);
    expect(gist('water got hot.')[0]).toBe('hot anywhere');
  });

  it('offers no card that the car does not have', () => {
    expect(offersOfLine('vibration', []).map(({ kind }) => kind)).toEqual(['snag']);
    const own = { id: 'own', name: 'Wheel nuts', starterId: null, place: 'allCorners' as const };
    expect(offersOfLine('vibration', [own]).map(({ kind }) => kind)).toEqual(['snag']);
  });

  it('names only cards that a starter set has', () => {
    const known = new Set(
      (['front', 'rear', 'four'] as const).flatMap((drive) => [
        ...idsOf(starterCards(drive, 'gravel')),
        ...idsOf(fullStarterCards(drive, 'gravel')),
      ]),
    );
    expect(CARD_WORDS.filter(([id]) => !known.has(`starter:${id}`))).toEqual([]);
  });

  it('keeps what was said, whatever it was, in words a snag can hold', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'grapheme', maxLength: 2000 }), (text) => {
        const lines = debriefLines(text);
        const withoutGaps = (words: string) => new Set(words.split(/\s+/u).join(''));
        expect(withoutGaps(lines.join(' '))).toEqual(withoutGaps(text));
        for (const line of lines) {
          const offers = offersOfLine(line, CARDS);
          expect(offers.at(-1)).toMatchObject({ kind: 'snag', words: line });
          for (const { words } of offers) {
            expect(words).toContain(line);
            expect(words.trim().length).toBeGreaterThan(0);
            expect(words.length).toBeLessThanOrEqual(300);
          }
        }
      }),
    );
  });
});

describe('debriefLines', () => {
  it('gives each line once, trimmed, without empty ones', () => {
    expect(debriefLines(' pedal soft \n\n\nford on SS3\r\npedal soft')).toEqual([
      'pedal soft',
      'ford on SS3',
    ]);
  });

  it('cuts a long line between its words, and a word without end where it must', () => {
    const long = Array.from({ length: 60 }, (_, index) => `word${index}`).join(' ');
    const lines = debriefLines(long);
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join(' ')).toBe(long);

    expect(debriefLines(`${'x'.repeat(150)}${'y'.repeat(20)}`)).toEqual(['x'.repeat(150), 'y'.repeat(20)]);
  });
});
