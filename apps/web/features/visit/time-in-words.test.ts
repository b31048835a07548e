import { describe, expect, it } from 'vitest';
import { needInWords } from './time-in-words';

describe('needInWords', () => {
  it('tells the need and what there is', () => {
    expect(needInWords(1440, 1920)).toBe('Do now needs 24 of 32 person-minutes.');
  });

  it('rounds work up and cuts time', () => {
    expect(needInWords(1441, 1979)).toBe('Do now needs 25 of 32 person-minutes.');
  });

  it('says by how much it is too much', () => {
    expect(needInWords(2460, 1920)).toBe(
      'Do now needs 41 of 32 person-minutes: 9 too many. Find more hands, or decide what waits.',
    );
  });

  it('has words for nothing to do', () => {
    expect(needInWords(0, 1920)).toBe('Nothing must be done now; there are 32 person-minutes.');
  });
});
