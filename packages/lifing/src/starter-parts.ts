import type { JobCard, Look, ReadingSpec } from './job-card';
import type { Interval } from './model';

export const EVERY_SERVICE: Interval[] = [{ counter: 'services', every: 1, tolerance: 0 }];
export const EVERY_DAY: Interval[] = [{ counter: 'days', every: 1, tolerance: 0 }];

/** A plain job: due every service, anywhere, by one person. Each starter card says what is different about it. */
const PLAIN_JOB: Omit<JobCard, 'id' | 'starterId' | 'name' | 'place' | 'seconds'> = {
  kind: 'job',
  intervals: EVERY_SERVICE,
  dateLimit: null,
  conditionFactors: {},
  combineConditions: 'largest',
  people: 1,
  leastServiceSeconds: 0,
  remoteAllowed: true,
  fitsNewPart: false,
  looks: [],
  readings: [],
  needsSignature: false,
  caution: '',
  tools: [],
  instruction: '',
};

export function starterCard(
  own: Pick<JobCard, 'id' | 'name' | 'place' | 'seconds'> & Partial<JobCard>,
): JobCard {
  // A copy, so that a team editing its own cards never edits the set the next team starts from.
  return copyOf({ ...PLAIN_JOB, ...own, id: `starter:${own.id}`, starterId: `starter:${own.id}` });
}

export function look(id: string, words: string): Look {
  return { id, words };
}

export function reading(
  own: Pick<ReadingSpec, 'id' | 'name' | 'kind' | 'unit'> & Partial<ReadingSpec>,
): ReadingSpec {
  return { decimals: 0, positions: [], low: null, high: null, required: false, ...own };
}

function copyOf(card: JobCard): JobCard {
  return {
    ...card,
    intervals: card.intervals.map((interval) => ({ ...interval })),
    conditionFactors: { ...card.conditionFactors },
    looks: card.looks.map((each) => ({ ...each })),
    readings: card.readings.map((each) => ({ ...each, positions: [...each.positions] })),
    tools: [...card.tools],
  };
}
