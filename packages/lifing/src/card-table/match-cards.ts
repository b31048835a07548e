import { completeCard } from '../card-as-sent';
import type { JobCard, Look, ReadingSpec } from '../job-card';
import { foldWords } from './fold-words';
import type { TableCard } from './model';

/** What becomes of a car's cards when a table takes their place. */
export interface MatchedCards {
  /** In the order of the table; `id` is null for a new card. */
  cards: { id: string | null; card: Omit<JobCard, 'id'> }[];
  /** Of the car's cards, those that the table does not name. */
  removed: JobCard[];
}

/**
 * Which card of a car each card of a table is. A card stays the same card when its name does (letters and signs aside),
 * so that its history stays with it; with the same name twice, the first is the first. Looks keep their ids by their
 * words and readings by their name, for the same reason. Of what a table leaves unsaid the card stays as it was.
 *
 * @example
 * matchCards(cards, cards.slice(1)).removed // [cards[0]]
 */
export function matchCards(before: readonly JobCard[], table: readonly TableCard[]): MatchedCards {
  const free = [...before];
  const cards = table.map((card) => {
    const at = free.findIndex((each) => foldWords(each.name) === foldWords(card.name));
    const [same] = at === -1 ? [] : free.splice(at, 1);
    return same ? { id: same.id, card: withIdsOf(same, card) } : { id: null, card: completeCard(card, null) };
  });
  return { cards, removed: free };
}

function withIdsOf(before: JobCard, card: TableCard): Omit<JobCard, 'id'> {
  return {
    ...completeCard({ ...card, starterId: card.starterId ?? before.starterId }, before),
    looks: keepIds<Look>(before.looks, card.looks, (look) => look.words),
    readings: keepIds<ReadingSpec>(before.readings, card.readings, (reading) => reading.name),
  };
}

function keepIds<Item extends { id: string }>(
  before: readonly Item[],
  items: readonly Item[],
  wordsOf: (item: Item) => string,
): Item[] {
  const free = [...before];
  const found = items.map((item) => {
    const at = free.findIndex((each) => wordsOf(each) === wordsOf(item));
    return at === -1 ? null : (free.splice(at, 1)[0]?.id ?? null);
  });
  const taken = new Set(before.map((each) => each.id));
  return items.map((item, index) => ({ ...item, id: found[index] ?? freshId(item.id, taken) }));
}

/** `look-1` as it is, or with the first number nobody has. */
function freshId(wanted: string, taken: Set<string>): string {
  const stem = wanted.replace(/-\d+$/, '');
  let id = wanted;
  for (let number = 1; taken.has(id); number += 1) id = `${stem}-${number}`;
  taken.add(id);
  return id;
}
