import type { JobCard } from '@halfshaft/lifing';

export interface CardGroup {
  title: string;
  cards: JobCard[];
}

/** Cards as they are asked for: rounds, then jobs of every service, then those that count distance, then the rest. */
export function groupCards(cards: readonly JobCard[]): CardGroup[] {
  const groups: CardGroup[] = ['Rounds', 'Every service', 'By distance', 'Other'].map((title) => ({
    title,
    cards: [],
  }));
  for (const card of cards) groups[groupOf(card)]?.cards.push(card);
  return groups.filter((group) => group.cards.length > 0);
}

function groupOf({ kind, intervals }: JobCard): number {
  if (kind === 'round') return 0;
  if (intervals.some(({ counter, every }) => counter === 'services' && every === 1)) return 1;
  return intervals.some(({ counter }) => counter === 'stageMetres' || counter === 'totalMetres') ? 2 : 3;
}
