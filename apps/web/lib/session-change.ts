import { tabChannel } from './tab-channel';

/** Counts up whenever another person may be behind the session than before, in this tab or another one. */
let epoch = 0;
const listeners = new Set<() => void>();
const channel = tabChannel<'changed'>('session');
let isHearing = false;

export function sessionEpoch(): number {
  return epoch;
}

export function subscribeSession(listener: () => void): () => void {
  if (!isHearing) channel.hear(onChanged);
  isHearing = true;
  listeners.add(listener);
  return () => listeners.delete(listener);
}

/** Someone else signed in, or somebody signed out: nothing shown for the person before may be acted on. */
export function tellSessionChanged(): void {
  channel.tell('changed');
  onChanged();
}

function onChanged(): void {
  epoch += 1;
  for (const listener of listeners) listener();
}
