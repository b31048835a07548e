import { fetchAllLater } from './later';

/** A page that never says so has shown what it has by then. */
const MOST_WAIT_MILLIS = 8000;

const waiting = new Set<() => void>();
let stands = false;
let patience: ReturnType<typeof setTimeout> | undefined;

/**
 * A screen says that what people came for is on it. The browser draws it; then the parts of this page come, so that all of
 * it works when the network is lost; and then what was kept waiting.
 */
export function firstScreenStands(): void {
  clearTimeout(patience);
  setTimeout(() => void fetchAllLater().then(runWaiting), 0);
}

function runWaiting(): void {
  stands = true;
  for (const run of [...waiting]) run();
  waiting.clear();
}

/** Whether the first screen and the parts of this page are here. */
export function hasFirstScreen(): boolean {
  return stands;
}

/**
 * Runs something that would stand in the way of the first screen on a slow network, as soon as that is there. The returned
 * function takes it back.
 */
export function behindFirstScreen(run: () => void): () => void {
  if (stands) run();
  else {
    patience ??= setTimeout(firstScreenStands, MOST_WAIT_MILLIS);
    waiting.add(run);
  }
  return () => waiting.delete(run);
}
