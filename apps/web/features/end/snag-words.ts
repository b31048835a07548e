import type { Snag } from '@halfshaft/worklog';
import { MOST_SNAG_CHARACTERS } from '../work/task-in-words';
import type { OpenItem } from './open-items';

/** A snag at the next event, with where it comes from. */
export function snagWords({ title, words }: OpenItem, from: string): string {
  const what = [title === 'Snag' ? '' : title, words].filter((part) => part !== '').join(': ');
  return `From ${from}: ${what}`.slice(0, MOST_SNAG_CHARACTERS);
}

/** What is not on the other event's list yet: each once, also when it was raised there and repaired since. */
export function notTakenYet(
  items: readonly OpenItem[],
  from: string,
  snags: readonly Pick<Snag, 'words' | 'withdrawn'>[],
) {
  const known = new Set(snags.filter(({ withdrawn }) => !withdrawn).map(({ words }) => words));
  return items.flatMap((item) => {
    const words = snagWords(item, from);
    if (known.has(words)) return [];
    known.add(words);
    return [{ item, words }];
  });
}
