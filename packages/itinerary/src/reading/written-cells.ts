import type { CutTable } from './read-itinerary-model';
import { writtenDistance } from './written-distance';
import { writtenClock, writtenDuration } from './written-time';

/** The cells of a row as the strict table writes them; what cannot be understood stays as it is. */
export function writtenCells(cells: readonly string[], headings: CutTable['headings']): string[] {
  return cells.map((cell, index) => {
    const heading = headings[index];
    switch (heading?.meaning) {
      case 'stageKm':
      case 'roadKm':
      case 'totalKm':
        return writtenDistance(cell, heading.unit);
      case 'target':
      case 'gap':
        return writtenDuration(cell, heading.unit);
      case 'due':
        return writtenClock(cell);
      default:
        return cell;
    }
  });
}
