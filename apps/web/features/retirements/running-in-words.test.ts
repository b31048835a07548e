import type { CarRecord } from '@halfshaft/itinerary';
import { expect, it } from 'vitest';
import { runningInWords } from './running-in-words';

const running = (carNumber: string, pointId: string | null): CarRecord => ({
  carNumber,
  className: 'N',
  outcome: 'notKnown',
  stop: null,
  reached: pointId === null ? null : { relation: 'after', pointId },
  backFromSection: null,
});

it('names the cars that are running by where they were seen last, and no others', () => {
  const finished: CarRecord = { ...running('4', null), outcome: 'finished' };
  const records = [
    running('1', 'SS4'),
    running('2', 'SS3'),
    finished,
    running('3', 'SS4'),
    running('9', null),
  ];
  expect(runningInWords(records)).toEqual([
    'Running when last seen, after SS4: 1, 3.',
    'Running when last seen, after SS3: 2.',
    'Not said what became of 9.',
  ]);
  expect(runningInWords([finished])).toEqual([]);
});
