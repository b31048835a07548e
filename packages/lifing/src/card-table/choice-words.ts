import type { CarPlace, JobCard, ReadingSpec } from '../job-card';
import type { Counter } from '../model';
import { foldWords } from './fold-words';

/** The words a table has for one choice: the first is written, all are read. */
export type ChoiceWords<Choice extends string> = Record<Choice, readonly [string, ...string[]]>;

export const KIND_WORDS: ChoiceWords<JobCard['kind']> = { job: ['job'], round: ['round'] };

export const PLACE_WORDS: ChoiceWords<CarPlace> = {
  engineBay: ['engine bay', 'engine'],
  underCar: ['under the car', 'under car'],
  frontLeft: ['front left', 'FL'],
  frontRight: ['front right', 'FR'],
  rearLeft: ['rear left', 'RL'],
  rearRight: ['rear right', 'RR'],
  allCorners: ['all four corners', 'all corners'],
  cockpit: ['cockpit'],
  body: ['body'],
  boot: ['boot'],
  wholeCar: ['whole car'],
};

/** The second of the words is that for one of them. */
export const COUNTER_WORDS: ChoiceWords<Counter> = {
  services: ['services', 'service'],
  stages: ['stages', 'stage'],
  stageMetres: ['stage km'],
  totalMetres: ['km', 'km', 'total km', 'km stages and road'],
  engineSeconds: ['engine hours', 'engine hour', 'hours', 'hour'],
  days: ['days', 'day'],
  events: ['events', 'event'],
};

/** In place of a limit, on a card that has none: the first is written, all are read. */
export const ON_REQUEST_WORDS = ['on request', 'no limit', 'by reading', 'when called for'] as const;

export const READING_KIND_WORDS: ChoiceWords<ReadingSpec['kind']> = {
  wear: ['wear'],
  level: ['level'],
  setValue: ['set value'],
  passFail: ['pass or fail', 'pass fail'],
  hint: ['hint'],
};

export const TOGETHER_WORDS: ChoiceWords<JobCard['combineConditions']> = {
  largest: ['worst', 'only the worst counts', 'largest'],
  sum: ['add up', 'they add up', 'sum'],
};

export const YES_NO_WORDS: ChoiceWords<'yes' | 'no'> = {
  yes: ['yes', 'y', 'true', 'x', '1'],
  no: ['no', 'n', 'false', '0'],
};

/** The choice that goes by these words, or null. */
export function choiceOf<Choice extends string>(words: string, choices: ChoiceWords<Choice>): Choice | null {
  const folded = foldWords(words);
  const names = Object.keys(choices) as Choice[];
  return names.find((name) => choices[name].some((known) => foldWords(known) === folded)) ?? null;
}

/** "job or round", for the sentence that asks for one of them. */
export function choicesInWords<Choice extends string>(choices: ChoiceWords<Choice>): string {
  const words = Object.values<readonly [string, ...string[]]>(choices).map(([first]) => first);
  const last = words.at(-1) ?? '';
  return words.length === 1 ? last : `${words.slice(0, -1).join(', ')} or ${last}`;
}
