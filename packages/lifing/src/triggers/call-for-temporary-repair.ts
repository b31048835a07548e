import { factsOf } from './facts';
import type { Trigger } from './model';
import { placeInWords } from './place-in-words';
import type { Call, CalledQuestion } from './questions';

/**
 * Due on each arrival at a service after the one (or the place) where the repair was made, until it is made good;
 * once looked at there, it is answered for that service.
 */
export function callForTemporaryRepair(
  trigger: Extract<Trigger, { kind: 'temporaryRepair' }>,
  question: CalledQuestion,
): Call | null {
  const { card, facts, pointIndex, at } = question;
  if (at === 'road' || looksOf(facts, card.id).includes(pointIndex)) return null;
  const open = factsOf(facts, 'temporaryRepair', pointIndex).filter(
    ({ fact }) =>
      (fact.cardId === card.id || trigger.cardIds.includes(card.id)) &&
      fact.pointIndex < pointIndex &&
      (fact.madeGoodAt === null || fact.madeGoodAt > pointIndex),
  );
  const first = open[0];
  const last = open.at(-1);
  if (first === undefined || last === undefined) return null;
  const looked = looksOf(facts, card.id).filter((each) => each < pointIndex);
  return {
    code: 'temporaryRepair',
    pointIndex: last.fact.pointIndex,
    dueFrom: Math.max(first.fact.pointIndex, ...looked) + 1,
    wantedBeforeNextChance: false,
    words: `temporary repair ${placeInWords(question, last.fact.pointIndex)}: ${last.fact.words}`,
  };
}

function looksOf(facts: CalledQuestion['facts'], cardId: string): number[] {
  return facts.flatMap((fact) => (fact.kind === 'done' && fact.cardId === cardId ? [fact.pointIndex] : []));
}
