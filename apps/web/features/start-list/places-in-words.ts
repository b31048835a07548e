import type { openStartListOutput } from '@halfshaft/contract';
import type { z } from 'zod';

export type ListedCar = z.infer<typeof openStartListOutput>[number];

/**
 * Where the organiser's list has a car.
 *
 * @example
 * placesInWords({ carNumber: '14', places: [{ section: 1, position: 9 }, { section: 3, position: 4 }] })
 * // 'Car 14 starts 9th, then 4th from Section 3 on.'
 */
export function placesInWords({ carNumber, places }: Pick<ListedCar, 'carNumber' | 'places'>): string {
  const said = places.map(({ section, position }, index) => {
    const from = section === 1 ? '' : ` from Section ${section} on`;
    return `${index === 0 ? '' : 'then '}${ordinal(position)}${from}`;
  });
  return `Car ${carNumber} starts ${said.join(', ')}.`;
}

/** "1st", "2nd", "11th". */
function ordinal(position: number): string {
  const [tens, ones] = [Math.floor(position / 10) % 10, position % 10];
  const endings: Record<number, string> = { 1: 'st', 2: 'nd', 3: 'rd' };
  return `${position}${tens === 1 ? 'th' : (endings[ones] ?? 'th')}`;
}
