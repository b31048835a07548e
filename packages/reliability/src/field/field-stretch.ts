/**
 * What one car of a field of starters drove at an event without a break, along the stages of that event. A car that came
 * back after it was out for the day has a second stretch, from where it came back.
 */
export interface FieldStretch {
  /** 0 for a car at its start. */
  from: number;
  to: number;
  /** What made it stop; null when it was still running at the end or the team chose to stop: then it is censored. */
  cause: string | null;
  /** Nobody is sure of the cause. */
  unsure: boolean;
}

/** What all the stretches make together. */
export function distanceDriven(stretches: readonly FieldStretch[]): number {
  return stretches.reduce((sum, { from, to }) => sum + (to - from), 0);
}
