/**
 * The words every function of this package shares.
 *
 * **Distance** is whatever the life is counted in: stage km, total km, engine hours, stages. All numbers of one call
 * are in the same unit, and what comes back is in that unit.
 */

/** One life: how far a part ran, and whether it failed there or was still good when it came off or the log ended. */
export interface Life {
  distance: number;
  failed: boolean;
}

/** Two-sided bounds at the level that was asked for. */
export interface Bounds {
  low: number;
  high: number;
}

/** Bounds of an amount that may have no upper limit: `null` means "the data set none". */
export interface OpenBounds {
  low: number;
  high: number | null;
}

/** The answer when the data cannot carry the question: a reason for the program, a sentence for the reader. */
export interface Refusal<Reason extends string> {
  ok: false;
  reason: Reason;
  says: string;
}

/** How sure the bounds shall be; 0.95 unless said. Two-sided, so that 0.95 leaves 2.5 % on each side. */
export interface LevelOption {
  level?: number;
}

export const DEFAULT_LEVEL = 0.95;
