import { checkDistances } from './check-distances';
import { checkHalts } from './check-halts';
import { checkNames } from './check-names';
import { checkOrder } from './check-order';
import { checkStartBlocks } from './check-start-blocks';
import { checkTimes } from './check-times';
import type { Draft, DraftProblem } from './draft';

/** All rules an itinerary is held to, in no particular order, each problem once. */
export function checkDraft(draft: Draft): DraftProblem[] {
  const times = checkTimes(draft);
  const told = new Set(times.map(place));
  const halts = checkHalts(draft).filter((problem) => !told.has(place(problem)));
  return [
    ...checkNames(draft),
    ...checkOrder(draft),
    ...halts,
    ...checkDistances(draft),
    ...times,
    ...checkStartBlocks(draft),
  ];
}

function place(problem: DraftProblem): string {
  return `${problem.pointIndex} ${problem.code}`;
}
