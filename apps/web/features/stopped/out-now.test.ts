import type { CarFact, RecordedFact } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { outNow } from './out-now';

const OUT: CarFact = { kind: 'out', forDay: true, cause: null, cardId: null, words: '' };
const BACK: CarFact = { kind: 'restarted', words: '' };

function stateOf(...facts: { fact: CarFact; entryId?: string; withdrawn?: boolean }[]) {
  const recorded = facts.map(
    ({ fact, entryId = 'car7', withdrawn = false }, index): [string, RecordedFact] => [
      String(index),
      {
        ...{ factId: String(index), entryId, fact, withdrawn, changedSeq: index + 1 },
        ...{ at: { kind: 'service', serviceId: 'A' }, recordedBy: 'mia', changedBy: 'mia' },
      },
    ],
  );
  // In the order of nothing: a map from the server is not sorted by seq.
  return { facts: new Map(recorded.toReversed()) };
}

it('holds a car for out from the word on until it starts again', () => {
  expect(outNow(stateOf(), 'car7')).toBeNull();
  expect(outNow(stateOf({ fact: OUT }), 'car7')).toEqual(OUT);
  expect(outNow(stateOf({ fact: OUT }, { fact: BACK }), 'car7')).toBeNull();
  expect(outNow(stateOf({ fact: OUT }, { fact: BACK }, { fact: { ...OUT, forDay: false } }), 'car7')).toEqual(
    {
      ...OUT,
      forDay: false,
    },
  );
});

it('passes over what was taken back and what is said of another car', () => {
  expect(outNow(stateOf({ fact: OUT, withdrawn: true }), 'car7')).toBeNull();
  expect(outNow(stateOf({ fact: OUT }, { fact: BACK, withdrawn: true }), 'car7')).toEqual(OUT);
  expect(outNow(stateOf({ fact: OUT, entryId: 'car9' }), 'car7')).toBeNull();
});
