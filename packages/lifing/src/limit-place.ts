import { dueAt, type EpochSeconds } from '@halfshaft/itinerary';
import { isInPieces } from './counters';
import type { Counter, LimitPlace } from './model';
import type { RoutedCard } from './questions';
import type { RouteStep } from './route-steps';
import { segmentWear } from './segment-wear';
import { startingWear } from './wear-between';

/**
 * Where along the route a card's wear first comes up to a limit, from when it was last done to the end of the event.
 * Inside a segment metres and clock are interpolated along a straight line and cut to whole numbers. Null when the
 * limit is not reached in the event, or was reached before it began.
 */
export function limitPlace(question: RoutedCard, counter: Counter, every: number): LimitPlace | null {
  const limit = every * 1000;
  const { lastDone, itinerary, position } = question;
  let wear = startingWear(question)[counter];
  if (wear >= limit) {
    const carried = lastDone.carried?.[counter] ?? 0;
    if (carried >= every) return null;
    return { stageId: null, pointIndex: 0, routeMetres: 0, at: dueAt(itinerary, 0, position) };
  }
  for (const step of question.steps) {
    if (step.segment.fromIndex < (lastDone.pointIndex ?? 0)) continue;
    const gained = segmentWear(step.segment, question)[counter];
    if (wear + gained >= limit) {
      return isInPieces(counter) ? endOf(step) : along(step, limit - wear, gained);
    }
    wear += gained;
  }
  return null;
}

/** Where the car in this position is at an instant; null before the event begins and after it has ended. */
export function placeAtTime(question: RoutedCard, instant: EpochSeconds): LimitPlace | null {
  const { steps } = question;
  const first = steps[0];
  if (first === undefined || instant < first.startsAt) return null;
  const step = steps.find((each) => instant <= each.endsAt);
  if (step === undefined) return null;
  const whole = step.endsAt - step.startsAt;
  return whole === 0 ? endOf(step) : along(step, Math.max(0, instant - step.startsAt), whole);
}

function along(step: RouteStep, part: number, whole: number): LimitPlace {
  if (part === whole) return endOf(step);
  const { segment } = step;
  return {
    stageId: segment.stageId,
    pointIndex: segment.fromIndex,
    routeMetres: step.metresBefore + Math.floor((segment.metres * part) / whole),
    at: step.startsAt + Math.floor(((step.endsAt - step.startsAt) * part) / whole),
  };
}

function endOf(step: RouteStep): LimitPlace {
  const { segment } = step;
  const onStage = segment.kind === 'stage';
  return {
    stageId: onStage ? segment.stageId : null,
    // The finish line of a stage is no point of its own: the car is still on the stage it entered.
    pointIndex: onStage ? segment.fromIndex : segment.toIndex,
    routeMetres: step.metresBefore + segment.metres,
    at: step.endsAt,
  };
}
