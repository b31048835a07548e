import { factsOf, isDoneAfter, type Placed } from './facts';
import { incidentInWords } from './incident-in-words';
import type { Fact, Trigger } from './model';
import { placeInWords } from './place-in-words';
import type { Call, CalledQuestion } from './questions';

type Incident = Extract<Fact, { kind: 'incident' }>;

/**
 * Due from the incident until the card is done after it. A trigger that asks for several counts them within a leg:
 * the first few are answered by nothing, each one from then on calls anew.
 */
export function callAfterIncident(
  trigger: Extract<Trigger, { kind: 'incident' }>,
  question: CalledQuestion,
): Call | null {
  if (!trigger.cardIds.includes(question.card.id)) return null;
  const { facts, pointIndex, card } = question;
  const open = incidentsThatCall(trigger, question).filter(
    (incident) => !isDoneAfter(facts, card.id, incident, pointIndex),
  );
  const first = open[0];
  const last = open.at(-1);
  if (first === undefined || last === undefined) return null;
  const where = placeInWords(question, last.fact.pointIndex);
  const words = incidentInWords(last.fact.code);
  return {
    code: 'incident',
    pointIndex: last.fact.pointIndex,
    dueFrom: first.fact.pointIndex,
    wantedBeforeNextChance: false,
    words: trigger.times > 1 ? `${words} ${where}, not the first that day` : `${words} ${where}`,
  };
}

function incidentsThatCall(
  { codes, times }: Extract<Trigger, { kind: 'incident' }>,
  { facts, pointIndex, itinerary }: CalledQuestion,
): Placed<Incident>[] {
  const inLeg = new Map<number, number>();
  return factsOf(facts, 'incident', pointIndex)
    .filter(({ fact }) => codes.includes(fact.code))
    .filter(({ fact }) => {
      const leg = itinerary.points[fact.pointIndex]?.leg ?? 0;
      const count = (inLeg.get(leg) ?? 0) + 1;
      inLeg.set(leg, count);
      return count >= times;
    });
}
