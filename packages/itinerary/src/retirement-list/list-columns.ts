import { foldWords } from './fold-words';

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
export const LIST_COLUMNS = Object.keys(LIST_HEADINGS) as ListColumn[];

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

/**
 * The column a heading means, whatever its case and punctuation; null when it means none.
 *
 * @example
 * listColumnOf('Car number') // 'car'
 */
export function listColumnOf(heading: string): ListColumn | null {
  const folded = foldWords(heading);
  const means = (column: ListColumn) =>
    foldWords(LIST_HEADINGS[column]) === folded || SYNONYMS[column].includes(folded);
  return LIST_COLUMNS.find(means) ?? null;
}
