import type { PartOutline } from '@halfshaft/contract';
import { type LimitAdvice, ratioSurvival } from '@halfshaft/reliability';

/** How many parts out of so many are said to be still good. */
const OUT_OF = 10;
const POINTS = 60;
const ROWS = 5;
const BEYOND = 1.15;

export interface LifePoint {
  x: number;
  y: number;
  low: number;
  high: number;
}

/** What is drawn of the lives of one part. */
export interface LifeDrawing {
  end: number;
  points: LifePoint[];
  /** A few of them, for the table. */
  rows: LifePoint[];
  marks: { x: number; filled: boolean }[];
}

/** The share still good along the way, as far as parts were watched and a little further. */
export function drawLives({ lives }: Pick<PartOutline, 'lives'>, { fit }: LimitAdvice): LifeDrawing {
  const marks = lives.observations.map((seen) =>
    seen.kind === 'failedBetween'
      ? { x: seen.before, filled: true }
      : { x: seen.distance, filled: seen.kind !== 'goodAt' },
  );
  const end = Math.max(...marks.map(({ x }) => x)) * BEYOND;
  const pointAt = (x: number): LifePoint => {
    const { surviving, bounds } = ratioSurvival(lives.observations, fit, x);
    return { x, y: surviving, ...bounds };
  };
  const along = (count: number) =>
    Array.from({ length: count }, (_, index) => pointAt((end * (index + 1)) / count));
  return { end, points: [{ x: 0, y: 1, low: 1, high: 1 }, ...along(POINTS)], rows: along(ROWS), marks };
}

/** "9 of 10". */
export function shareInWords(share: number): string {
  return `${Math.round(share * OUT_OF)} of ${OUT_OF}`;
}
