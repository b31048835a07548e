import type { DraftPoint } from './draft';
import { haltsAfterEachPoint } from './halt-windows';
import { MAX_BETWEEN_LEGS_SECONDS, MAX_PARC_FERME_SECONDS, MAX_TARGET_SECONDS } from './limits';

/** For each point, the longest believable time since the point before it, in seconds. */
export function longestSteps(points: readonly DraftPoint[]): number[] {
  const halts = haltsAfterEachPoint(points);
  return points.map((point, index) => {
    if (point.leg !== points[index - 1]?.leg) return MAX_BETWEEN_LEGS_SECONDS;
    return halts[index - 1]?.has('parcFerme') ? MAX_PARC_FERME_SECONDS : MAX_TARGET_SECONDS;
  });
}
