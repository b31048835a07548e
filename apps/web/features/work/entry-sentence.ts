import {
  type CarFact,
  type ConcernCode,
  concernInWords,
  type EntryNames,
  entryInWords,
  type LogEntry,
  type RecordedFact,
  type Snag,
} from '@halfshaft/worklog';
import { placeInWords } from './place-in-words';

/** An entry as a sentence, with places called as the car plan calls them. */
export function sentenceOf(entry: LogEntry, names: EntryNames): string {
  return entryInWords({ ...entry, body: withPlaceWords(entry.body) }, names);
}

/** The same for whom it concerns, with what it means for them. */
export function concernSentenceOf(code: ConcernCode, entry: LogEntry, names: EntryNames): string {
  return concernInWords(code, { ...entry, body: withPlaceWords(entry.body) }, names);
}

function withPlaceWords(body: LogEntry['body']): LogEntry['body'] {
  if (body.kind === 'snagRaised') return { ...body, place: placeInWords(body.place) };
  if (body.kind === 'factRecorded') return { ...body, fact: withPlaceName(body.fact) };
  if (body.kind !== 'undone') return body;
  const named = (snag: Snag): Snag => ({ ...snag, place: placeInWords(snag.place) });
  const placed = (row: RecordedFact): RecordedFact => ({ ...row, fact: withPlaceName(row.fact) });
  return { ...body, snags: body.snags.map(named), facts: (body.facts ?? []).map(placed) };
}

function withPlaceName(fact: CarFact): CarFact {
  if (fact.kind !== 'incident' || fact.place === null) return fact;
  return { ...fact, place: placeInWords(fact.place) };
}
