import { type EntryNames, entryInWords, type LogEntry, type Snag } from '@halfshaft/worklog';
import { placeInWords } from './place-in-words';

/** An entry as a sentence, with places called as the car plan calls them. */
export function sentenceOf(entry: LogEntry, names: EntryNames): string {
  return entryInWords({ ...entry, body: withPlaceWords(entry.body) }, names);
}

function withPlaceWords(body: LogEntry['body']): LogEntry['body'] {
  if (body.kind === 'snagRaised') return { ...body, place: placeInWords(body.place) };
  if (body.kind !== 'undone') return body;
  const named = (snag: Snag): Snag => ({ ...snag, place: placeInWords(snag.place) });
  return { ...body, snags: body.snags.map(named) };
}
