import { describe, expect, it } from 'vitest';
import { placesInWords } from './places-in-words';

describe('placesInWords', () => {
  it.each([
    [[{ section: 1, position: 9 }], 'Car 14 starts 9th.'],
    [[{ section: 3, position: 2 }], 'Car 14 starts 2nd from Section 3 on.'],
    [
      [
        { section: 1, position: 21 },
        { section: 2, position: 3 },
      ],
      'Car 14 starts 21st, then 3rd from Section 2 on.',
    ],
    [[{ section: 1, position: 11 }], 'Car 14 starts 11th.'],
    [[{ section: 1, position: 112 }], 'Car 14 starts 112th.'],
    [[{ section: 1, position: 122 }], 'Car 14 starts 122nd.'],
  ])('of %j says "%s"', (places, words) => {
    expect(placesInWords({ carNumber: '14', places })).toBe(words);
  });
});
