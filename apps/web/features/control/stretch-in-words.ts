import type { Itinerary, MinutesToLose } from '@halfshaft/itinerary';
import { toLoseInWords } from './lateness-in-words';

/** One stretch without a reset inside: "Section 2, TC4B to TC4D" and "Minutes still to lose: 18, resets at …". */
export function stretchInWords(stretch: MinutesToLose, { points }: Itinerary) {
  const { section, fromIndex, toIndex } = stretch;
  const [from, to] = [points[fromIndex]?.id ?? '', points[toIndex]?.id ?? ''];
  const span = from === to ? from : `${from} to ${to}`;
  return { where: `Section ${section}, ${span}.`, minutes: toLoseInWords(stretch) };
}
