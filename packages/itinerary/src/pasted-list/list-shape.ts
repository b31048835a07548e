import { foldWords } from './fold-words';

/** What a pasted list consists of: its columns by meaning, and how each may be headed. */
export interface ListShape<Column extends string> {
  /** The heading each column is written under, in the order the list is written. */
  headings: Readonly<Record<Column, string>>;
  /** Further headings that mean the same, folded. */
  synonyms: Readonly<Record<Column, readonly string[]>>;
  /** Columns without which nothing can be read. */
  necessary: readonly Column[];
  /** More than any list has; the rest would be a slip of the clipboard. */
  mostRows: number;
  /** Said of a list without a row. */
  emptySays: string;
}

/** The columns of a list in the order it is written. */
export function columnsOf<Column extends string>({
  headings,
}: Pick<ListShape<Column>, 'headings'>): Column[] {
  return Object.keys(headings) as Column[];
}

/** The column a heading means, whatever its case and punctuation; null when it means none. */
export function listColumnOf<Column extends string>(
  shape: Pick<ListShape<Column>, 'headings' | 'synonyms'>,
  heading: string,
): Column | null {
  const folded = foldWords(heading);
  const means = (column: Column) =>
    foldWords(shape.headings[column]) === folded || shape.synonyms[column].includes(folded);
  return columnsOf(shape).find(means) ?? null;
}
