import { describe, expect, it } from 'vitest';
import { saveWordsOf, standingInWords } from './organiser-event';

const standing = (bulletinNumber: number | null, hasDraft: boolean, versions: number) => ({
  bulletinNumber,
  hasDraft,
  versions,
});

describe('standingInWords', () => {
  it.each([
    [standing(null, false, 3), 'not published, version 3'],
    [standing(0, false, 1), 'published'],
    [standing(0, true, 2), 'published, bulletin 1 is a draft'],
    [standing(2, false, 5), 'bulletin 2 issued'],
    [standing(2, true, 6), 'bulletin 2 issued, bulletin 3 is a draft'],
  ])('of %j says "%s"', (event, words) => {
    expect(standingInWords(event)).toBe(words);
  });
});

describe('saveWordsOf', () => {
  it.each([
    [null, 'Save the event'],
    [standing(null, false, 1), 'Save as version 2'],
    [standing(0, false, 1), 'Save as the draft of bulletin 1'],
    [standing(2, true, 6), 'Save as the draft of bulletin 3'],
  ])('of %j says "%s"', (event, words) => {
    expect(saveWordsOf(event)).toBe(words);
  });
});
