import type { ConcernCode } from './concerns-of';
import type { LogEntry } from './entry';
import { type EntryNames, entryInWords } from './entry-in-words';

/** What it means for who is told, and what to do. Follows the sentence of the entry. */
const MEANS: Record<ConcernCode, string> = {
  closedWhatYouHold: 'You had it: leave it now, or look at what was done.',
  closedToo: 'You had closed it as well. Both of you stand in the log.',
  closedWhatYouLeft: 'You had left it. It counts as done now.',
  letGoForYou: 'You no longer have it. Take it again if you are at it.',
  leftWhatYouHold: 'You had it: stop, and ask why if you are at it.',
  reopenedYours: 'You had closed it: ask what is wrong, or do it again.',
  tookBackYours: 'It was yours. If it was right, do it once more.',
  raisedToo: 'You had raised it before. Both stand in one snag.',
  recordedToo: 'You had recorded it before. What you recorded stands.',
  signedForYou: 'If that was not you, say so: the work must be checked again.',
  saidOtherwise: 'You had said otherwise, and the last one counts. Ask which is right.',
};

/**
 * An entry as it is told to somebody whom it concerns.
 *
 * @example
 * concernInWords('closedWhatYouHold', entry, names)
 * // "Kai closed 'Wheel nuts' at Service B. You had it: leave it now, or look at what was done."
 */
export function concernInWords(code: ConcernCode, entry: LogEntry, names: EntryNames): string {
  return `${entryInWords({ ...entry, flags: [] }, names)}. ${MEANS[code]}`;
}
