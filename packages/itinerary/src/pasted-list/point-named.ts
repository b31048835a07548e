import type { Itinerary, Point } from '../model';

/** The stage or control that a cell names, whatever its case and spaces. */
export function pointNamed({ points }: Pick<Itinerary, 'points'>, name: string): Point | undefined {
  const folded = foldName(name);
  return points.find(({ id }) => foldName(id) === folded);
}

const foldName = (name: string) => name.replace(/\s+/g, '').toLowerCase();
