import { describe, expect, it } from 'vitest';
import { eventId } from './ids';
import { optionalText, shortText, wholeNumber } from './words';

/** The sentence a person reads, or null when the value is taken. */
function sentenceFor(
  schema: { safeParse(value: unknown): { error?: { issues: { message: string }[] } } },
  value: unknown,
) {
  return schema.safeParse(value).error?.issues[0]?.message ?? null;
}

describe('the words of the contract', () => {
  it.each([
    [shortText('The name', 5), '   ', 'The name is empty. Type it in.'],
    [shortText('The name', 5), undefined, 'The name is missing.'],
    [shortText('The name', 5), 'abcdef', 'The name is longer than 5 characters. Shorten it.'],
    [optionalText('The reason', 3), 'abcd', 'The reason is longer than 3 characters. Shorten it.'],
    [
      wholeNumber('The number of people', 1, 20),
      0,
      'The number of people must be a whole number from 1 to 20.',
    ],
    [
      wholeNumber('The number of people', 1, 20),
      2.5,
      'The number of people must be a whole number from 1 to 20.',
    ],
    [
      wholeNumber('The number of people', 1, 20),
      '2',
      'The number of people must be a whole number from 1 to 20.',
    ],
    [eventId, '17', 'That is not the id of an event. Go back and choose it again.'],
  ])('say what is wrong and what to do: %#', (schema, value, sentence) => {
    expect(sentenceFor(schema, value)).toBe(sentence);
  });

  it('take what is right, and trim it', () => {
    expect(shortText('The name', 5).parse('  Mia ')).toBe('Mia');
    expect(optionalText('The reason', 3).parse('  ')).toBe('');
    expect(wholeNumber('The number of people', 1, 20).parse(20)).toBe(20);
  });
});
