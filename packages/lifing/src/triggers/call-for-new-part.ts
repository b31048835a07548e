import type { Itinerary, StageId, StageRun } from '@halfshaft/itinerary';
import { compareTime, factsOf } from './facts';
import type { Trigger } from './model';
import { placeInWords } from './place-in-words';
import type { Call, CalledQuestion } from './questions';

/** Due once the new part has been driven for the stages asked for, until it is looked at after them. */
export function callForNewPart(
  trigger: Extract<Trigger, { kind: 'newlyFitted' }>,
  question: CalledQuestion,
): Call | null {
  const { card, facts, pointIndex, cards, itinerary, runs } = question;
  if (!trigger.cardIds.includes(card.id)) return null;
  const looks = factsOf(facts, 'done', pointIndex).filter(({ fact }) => fact.cardId === card.id);
  const open = [...factsOf(facts, 'fitted', pointIndex), ...factsOf(facts, 'done', pointIndex)]
    .filter(({ fact }) => trigger.fittedCardIds.includes(fact.cardId))
    .sort(compareTime)
    .flatMap(({ fact }) => {
      const dueFrom = pointAfterStages(itinerary, runs, fact.pointIndex, trigger.afterStages);
      const isDue = dueFrom !== null && dueFrom <= pointIndex;
      return isDue && !looks.some((look) => look.fact.pointIndex >= dueFrom) ? [{ fact, dueFrom }] : [];
    });
  const first = open[0];
  const last = open.at(-1);
  if (first === undefined || last === undefined) return null;
  const name = cards.find((each) => each.id === last.fact.cardId)?.name ?? 'a new part';
  return {
    code: 'newlyFitted',
    pointIndex: last.fact.pointIndex,
    dueFrom: first.dueFrom,
    wantedBeforeNextChance: false,
    words: `first look after "${name}", fitted ${placeInWords(question, last.fact.pointIndex)}`,
  };
}

/** The first point reached after so many stages driven since another point; null when there are not that many. */
function pointAfterStages(
  itinerary: Itinerary,
  runs: ReadonlyMap<StageId, StageRun>,
  from: number,
  stages: number,
): number | null {
  let driven = 0;
  for (const [pointIndex, point] of itinerary.points.entries()) {
    if (pointIndex < from || point.kind !== 'stage' || runs.get(point.id)?.driven === false) continue;
    driven += 1;
    if (driven === stages) return pointIndex + 1;
  }
  return null;
}
