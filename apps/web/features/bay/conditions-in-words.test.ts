import { describe, expect, it } from 'vitest';
import { conditionsInWords } from './conditions-in-words';

describe('conditionsInWords', () => {
  it('names what there was, in three words', () => {
    expect(conditionsInWords({ dust: 1000, water: 0, night: 500 })).toBe('dust bad, night some');
    expect(conditionsInWords({})).toBe('');
  });

  it('takes the nearest word for amounts between', () => {
    expect(conditionsInWords({ dust: 249, water: 250, rough: 749, jumps: 750 })).toBe(
      'water some, rough some, jumps bad',
    );
  });
});
