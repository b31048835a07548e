import {
  type CardTableProblem,
  completeCard,
  type JobCard,
  type MatchedCards,
  matchCards,
  readCardTable,
} from '@halfshaft/lifing';

export type HowToImport = 'add' | 'replace';

/** What the live check says of a pasted table of cards. */
export type CheckedCards =
  | { state: 'empty' }
  | { state: 'bad'; problems: CardTableProblem[] }
  /** What would become of the car's cards; `sameName` are those added although the car has one of that name. */
  | { state: 'good'; matched: MatchedCards; sameName: string[] };

/** Reads a pasted table as the server will, and lays it beside the cards of the car. */
export function checkCardTable(text: string, how: HowToImport, before: readonly JobCard[]): CheckedCards {
  if (text.trim() === '') return { state: 'empty' };
  const read = readCardTable(text);
  if (!read.ok) return { state: 'bad', problems: read.problems };
  const matched = matchCards(before, read.cards);
  if (how === 'replace') return { state: 'good', matched, sameName: [] };
  const added = read.cards.map((card) => ({ id: null, card: completeCard(card, null) }));
  const sameName = matched.cards.filter(({ id }) => id !== null).map(({ card }) => card.name);
  return { state: 'good', matched: { cards: added, removed: [] }, sameName };
}

/**
 * What saving would do, in a sentence or two.
 *
 * @example
 * importInWords({ cards: [{ id: null, card }], removed: [] }) // '1 card is new.'
 */
export function importInWords({ cards, removed }: MatchedCards): string {
  const kept = cards.filter(({ id }) => id !== null).length;
  const added = cards.length - kept;
  const parts = [
    added > 0 ? `${countOf(added)} ${added === 1 ? 'is' : 'are'} new.` : '',
    kept > 0 ? `${countOf(kept)} ${kept === 1 ? 'takes' : 'take'} the place of one with the same name.` : '',
    removed.length > 0
      ? `${countOf(removed.length)} of the car ${removed.length === 1 ? 'is' : 'are'} not in the table and will be removed.`
      : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}

function countOf(count: number): string {
  return count === 1 ? '1 card' : `${count} cards`;
}
