import { requireNumber } from '../require-number';

/** What is known of one life. */
export type LifeObservation =
  /** Failed at this distance. */
  | { kind: 'failedAt'; distance: number }
  /** Taken off, or still running, at this distance without having failed. */
  | { kind: 'goodAt'; distance: number }
  /** Found failed when it was looked at here for the first time. */
  | { kind: 'failedBefore'; distance: number }
  /** Good at one look, failed at the next. */
  | { kind: 'failedBetween'; after: number; before: number };

/**
 * An observation as the likelihood wants it: the life lies between two distances, given as natural logarithms and
 * possibly endless; equal ones mean it is known exactly.
 */
export interface LogLife {
  from: number;
  to: number;
}

/**
 * Observations as ranges of log distance.
 *
 * @throws RangeError when a distance is not a number, a failure lies at 0 or a range is empty
 */
export function readObservations(functionName: string, observations: readonly LifeObservation[]): LogLife[] {
  return observations.map((seen) => readObservation(functionName, seen));
}

function readObservation(functionName: string, seen: LifeObservation): LogLife {
  switch (seen.kind) {
    case 'failedAt': {
      const what = 'the distance of a failure (one at 0 is given as failedBefore)';
      requireNumber(functionName, what, seen.distance, 'positive');
      return { from: Math.log(seen.distance), to: Math.log(seen.distance) };
    }
    case 'goodAt':
      requireNumber(functionName, 'a distance', seen.distance, 'notNegative');
      return { from: Math.log(seen.distance), to: Infinity };
    case 'failedBefore':
      requireNumber(functionName, 'the distance of a failure', seen.distance, 'positive');
      return { from: -Infinity, to: Math.log(seen.distance) };
    case 'failedBetween':
      requireNumber(functionName, 'the last distance without a failure', seen.after, 'notNegative');
      requireNumber(functionName, 'the distance of a failure', seen.before, 'positive');
      if (seen.before <= seen.after) {
        throw new RangeError(
          `${functionName}: a failure between ${seen.after} and ${seen.before} has no room.`,
        );
      }
      return { from: Math.log(seen.after), to: Math.log(seen.before) };
  }
}
