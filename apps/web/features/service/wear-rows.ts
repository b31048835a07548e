import { type Itinerary, routeMetresAt } from '@halfshaft/itinerary';
import { combinedReasonInWords, type ReasonNames, type VerdictReason } from '@halfshaft/lifing';
import type { WearRow } from '../route/wear-bar';
import type { JudgedCard } from './judge-visit';
import type { Visit } from './visit';

/** The bars under the route: every card that is do now or if time here. */
export function wearRowsOf(
  itinerary: Itinerary,
  visit: Visit,
  cards: readonly JudgedCard[],
  names: ReasonNames,
): WearRow[] {
  return cards
    .filter(({ judged }) => judged.verdict !== 'leave')
    .map((each) => rowOf(itinerary, visit, each, names));
}

function rowOf(
  itinerary: Itinerary,
  visit: Visit,
  { card, judged, lastDone }: JudgedCard,
  names: ReasonNames,
): WearRow {
  const first = judged.reasons.find((each) => each.reason.code !== 'notHere');
  const reason = judged.reasons.flatMap(intervalReason)[0];
  const doneAt = lastDone?.pointIndex ?? null;
  const fromMetres = doneAt === null ? 0 : routeMetresAt(itinerary, doneAt);
  return {
    id: card.id,
    label: card.name,
    fromMetres,
    toMetres: metresOfNext(itinerary, visit, reason),
    limitMetres: limitMetres(reason, fromMetres),
    verdict: judged.verdict,
    ...(first ? { note: combinedReasonInWords(first, names) } : {}),
  };
}

/** A bar is drawn by the card's own limit; what happened has no place on the route to come. */
function intervalReason({ source, reason }: JudgedCard['judged']['reasons'][number]): VerdictReason[] {
  return source === 'interval' && reason.code !== 'notHere' ? [reason] : [];
}

/** Where the card must last to: the next service where it can be done, or the end of the event. */
function metresOfNext(itinerary: Itinerary, visit: Visit, reason: VerdictReason | undefined): number {
  const next = visit.services.find((service) => service.id === reason?.nextChance);
  if (next) return routeMetresAt(itinerary, next.inIndex);
  const last = itinerary.points.at(-1);
  const lastStage = last?.kind === 'stage' ? last.stageMetres : 0;
  return routeMetresAt(itinerary, itinerary.points.length - 1) + lastStage;
}

function limitMetres(reason: VerdictReason | undefined, fromMetres: number): number | null {
  if (reason?.passedAt) return Math.max(fromMetres, reason.passedAt.routeMetres);
  return reason?.code === 'past' ? fromMetres : null;
}
