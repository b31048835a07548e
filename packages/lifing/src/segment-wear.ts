import type { Conditions, RouteSegment } from '@halfshaft/itinerary';
import { canBeDoneAt } from './can-be-done-at';
import { emptyCounters } from './counters';
import type { Counters } from './model';
import type { WearQuestion } from './questions';
import { wearMultiplier } from './wear-multiplier';

type WearContext = Omit<WearQuestion, 'lastDone' | 'toIndex' | 'itinerary'>;

/**
 * What one piece of the route adds to each counter of a card, in thousandths of the counter's unit. Stages, services
 * and days are whole pieces, added at the end of the segment; metres and engine seconds grow evenly along it.
 */
export function segmentWear(segment: RouteSegment, context: WearContext): Counters {
  const wear = segment.kind === 'stage' ? stageWear(segment, context) : roadWear(segment);
  if (segment.startsLeg) wear.days += 1000;
  if (segment.startsService && isChanceAt(segment.toIndex, context)) wear.services += 1000;
  return wear;
}

/**
 * Whether driving into this point is arriving at a service where the card can be done. Only those count as services
 * for it: else a card that is due "every service" would be overdue after a remote service nobody may do it in.
 */
export function isChanceAt(pointIndex: number, context: Pick<WearContext, 'card' | 'services'>): boolean {
  return context.services.some(
    (service) => service.inIndex === pointIndex && canBeDoneAt(context.card, service),
  );
}

function roadWear(segment: RouteSegment): Counters {
  const wear = emptyCounters();
  wear.totalMetres = segment.metres * 1000;
  wear.engineSeconds = segment.engineOn ? (segment.endsAt - segment.startsAt) * 1000 : 0;
  return wear;
}

function stageWear(segment: RouteSegment, context: WearContext): Counters {
  const wear = emptyCounters();
  const conditions = conditionsIfDriven(segment, context);
  if (conditions === null) return wear;
  const multiplier = wearMultiplier(context.card, conditions);
  wear.stages = multiplier;
  wear.stageMetres = segment.metres * multiplier;
  wear.totalMetres = wear.stageMetres;
  wear.engineSeconds = segment.engineOn ? (segment.endsAt - segment.startsAt) * multiplier : 0;
  return wear;
}

/** Null when the stage is known not to be driven. A stage nobody confirmed counts as driven, as planned. */
function conditionsIfDriven(segment: RouteSegment, context: WearContext): Conditions | null {
  if (segment.stageId === null) return {};
  const run = context.runs.get(segment.stageId);
  if (run === undefined) return context.plannedConditions.get(segment.stageId) ?? {};
  return run.driven ? run.conditions : null;
}
