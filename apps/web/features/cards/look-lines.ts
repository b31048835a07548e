import type { Look } from '@halfshaft/lifing';

/** The lines of a text box that say something. */
export function linesOf(text: string): string[] {
  return text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '');
}

/**
 * The looks written one a line. A look keeps its id, by which findings of earlier services name it, as long as its
 * words are the same, wherever it was moved to. A line that stands where a look vanished is that look in new words;
 * any other line gets an id nobody has yet.
 *
 * @example
 * looksOf('rims\ntyres', [{ id: 'a', words: 'tyres' }]) // [{ id: 'look-1', words: 'rims' }, { id: 'a', words: 'tyres' }]
 */
export function looksOf(text: string, before: readonly Look[]): Look[] {
  const lines = linesOf(text);
  const free = [...before];
  const kept = lines.map((words) => {
    const at = free.findIndex((look) => look.words === words);
    return at === -1 ? null : (free.splice(at, 1)[0]?.id ?? null);
  });
  const taken = new Set(before.map((look) => look.id));
  return lines.map((words, index) => {
    const same = kept[index];
    if (same) return { id: same, words };
    const reworded = takeReworded(free, before[index]);
    return { id: reworded ?? newId(taken), words };
  });
}

function takeReworded(free: Look[], stoodHere: Look | undefined): string | null {
  const at = free.findIndex((look) => look.id === stoodHere?.id);
  return at === -1 ? null : (free.splice(at, 1)[0]?.id ?? null);
}

function newId(taken: Set<string>): string {
  let number = 1;
  while (taken.has(`look-${number}`)) number += 1;
  taken.add(`look-${number}`);
  return `look-${number}`;
}
