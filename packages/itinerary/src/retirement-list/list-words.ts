import { foldWords } from '../pasted-list/fold-words';
import type { CarOutcome, CauseSource, StatedCause } from './model';

/** The first word of each is the one that is written; all are read. */
type Words<Choice extends string> = Readonly<Record<Choice, readonly [string, ...string[]]>>;

export const OUTCOME_WORDS: Words<CarOutcome> = {
  finished: ['finished', 'finish', 'finisher', 'classified'],
  out: ['out', 'retired', 'out for good', 'retirement'],
  outForDay: ['out for the day', 'out for day', 'out of the day', 'out of the leg'],
  notStarted: ['did not start', 'not started', 'non starter', 'no start'],
  notKnown: ['running', 'still running', 'not known', 'unknown'],
};

export const CAUSE_WORDS: Words<StatedCause> = {
  mechanical: ['mechanical', 'technical', 'mechanical failure'],
  offRoad: ['off road', 'off', 'off the road', 'accident', 'crash'],
  time: ['time', 'out of time', 'over time', 'late', 'maximum lateness'],
  withdrawn: ['withdrawn', 'withdrew', 'withdrawal'],
  other: ['other', 'another cause'],
};

export const SOURCE_WORDS: Words<CauseSource> = {
  crew: ['crew', 'stated by crew', 'stated by the crew', 'crew said'],
  official: ['official', 'seen by official', 'seen by an official', 'marshal'],
  unsure: ['unsure', 'not sure'],
};

/** The choice a cell means, whatever its case and punctuation; null when it means none. */
export function choiceOf<Choice extends string>(words: Words<Choice>, cell: string): Choice | null {
  const folded = foldWords(cell);
  const choices = Object.keys(words) as Choice[];
  return choices.find((choice) => words[choice].includes(folded)) ?? null;
}

/** "mechanical, off road, time, withdrawn or other": what may be written. */
export function listChoices(words: Words<string>): string {
  const all = Object.values(words).map(([first]) => first);
  return `${all.slice(0, -1).join(', ')} or ${all.at(-1)}`;
}
