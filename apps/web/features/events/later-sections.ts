import { type EntryPositions, type Itinerary, positionIn, positionsOf } from '@halfshaft/itinerary';

/** Sections in which the order may be set anew: all from the second one on, in driving order. */
export function laterSections({ points }: Itinerary): number[] {
  const sections = new Set(points.map(({ section }) => section));
  return [...sections].filter((section) => section > 1).sort((one, other) => one - other);
}

/**
 * Where a car starts, with the sections in which that changes.
 *
 * @example
 * startInWords(itinerary, entry) // 'Start position 14, then 9 from Section 3 on'
 */
export function startInWords(itinerary: Itinerary, entry: EntryPositions): string {
  const positions = positionsOf(entry);
  let before = entry.startPosition;
  const changes = laterSections(itinerary).flatMap((section) => {
    const now = positionIn(positions, section);
    if (now === before) return [];
    before = now;
    return [`then ${now} from Section ${section} on`];
  });
  return [`Start position ${entry.startPosition}`, ...changes].join(', ');
}
