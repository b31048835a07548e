import type { ListShape } from '../pasted-list/list-shape';

/** The columns of the list, by meaning. */
export type ListColumn =
  | 'car'
  | 'className'
  | 'outcome'
  | 'stopped'
  | 'cause'
  | 'part'
  | 'source'
  | 'backFrom';

/** The heading each column is written under, in the order the list is written. */
export const LIST_HEADINGS: Readonly<Record<ListColumn, string>> = {
  car: 'Car',
  className: 'Class',
  outcome: 'What happened',
  stopped: 'Where',
  cause: 'Cause',
  part: 'Part',
  source: 'Who says so',
  backFrom: 'Back from section',
};

/** Further headings that mean the same, folded. */
const SYNONYMS: Readonly<Record<ListColumn, readonly string[]>> = {
  car: ['car number', 'no', 'number', 'start number', 'door number'],
  className: ['car class', 'group', 'category'],
  outcome: ['outcome', 'result', 'what became of it', 'standing'],
  stopped: ['stopped', 'where stopped', 'where it stopped', 'place', 'last seen'],
  cause: ['reason', 'why', 'stated cause'],
  part: ['what broke', 'what failed', 'component'],
  source: ['said by', 'stated by', 'how sure', 'confidence', 'sure'],
  backFrom: ['back from', 'restart', 'restarted', 'restart section', 'restart from section'],
};

/** The list of who started, who stopped, where and why. More rows than any event has starters and restarts is a slip. */
export const RETIREMENT_SHAPE: ListShape<ListColumn> = {
  headings: LIST_HEADINGS,
  synonyms: SYNONYMS,
  necessary: ['car', 'outcome'],
  mostRows: 1000,
  emptySays: 'The list has no car. Paste a row of headings, then a row for each car that started.',
};
