import { describe, expect, it } from 'vitest';
import { TWO_LEGS, VIENNA } from '../fixtures';
import { parseItineraryTable } from '../parse-itinerary-table';
import { readItinerary } from './read-itinerary';

describe('readItinerary of far too much text', () => {
  it.each([
    ['one line of a megabyte', 'ab cd '.repeat(160_000)],
    ['long lines', `${'ab 12 '.repeat(600)}\n`.repeat(130)],
    ['very many short lines', 'TC 1 Au 12,4\n'.repeat(9000)],
  ])('leaves %s to the strict reader, which names the problem', (_what, text) => {
    const { parsed, table } = readItinerary(text, VIENNA);
    expect(parsed).toEqual(parseItineraryTable(text, VIENNA));
    expect(parsed.ok).toBe(false);
    expect(table).toBeNull();
  });

  it('still reads a good table with one very long cell', () => {
    const text = TWO_LEGS.replace('Start Lindach', `Start ${'Lindach '.repeat(220)}`);
    expect(readItinerary(text, VIENNA).parsed.ok).toBe(true);
  });
});
