import { COLUMN_HEADINGS, type ReadHeading } from '@halfshaft/itinerary';

/** A heading as written; where nothing is, what its column was understood as. `index` is 0-based. */
export function headingName(heading: ReadHeading | undefined, index: number): string {
  if (heading && heading.text !== '') return heading.text;
  const meaning = heading?.meaning;
  return meaning && meaning !== 'surplus' ? COLUMN_HEADINGS[meaning] : `Column ${index + 1}`;
}
