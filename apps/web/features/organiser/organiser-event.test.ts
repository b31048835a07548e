import { describe, expect, it } from 'vitest';
import { standingInWords } from './organiser-event';

describe('standingInWords', () => {
  it.each([
    [null, 1, 'not published, version 1'],
    [1_781_331_180_000, 3, 'published, version 3'],
  ])('of an event published at %j with %i versions says "%s"', (publishedAt, versions, words) => {
    expect(standingInWords({ publishedAt, versions })).toBe(words);
  });
});
