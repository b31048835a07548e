import type { ConditionName, StagePoint } from '@halfshaft/itinerary';
import { canBeDoneAt } from '../can-be-done-at';
import { nameOfService } from '../name-of-service';
import { compareTime, factsOf } from './facts';
import type { Trigger } from './model';
import type { Call, CalledQuestion } from './questions';

type ConditionTrigger = Extract<Trigger, { kind: 'nextConditions' }>;

interface StageAhead {
  pointIndex: number;
  stage: StagePoint;
}

const IN_WORDS: Record<ConditionName, string> = {
  dust: 'dusty stage',
  water: 'wet stage',
  rough: 'rough stage',
  night: 'dark stage',
  jumps: 'stage with jumps',
};

/**
 * On: due when such a stage comes before the next service where it could be done, unless it is on already. Off: due
 * when it is on and such stages are over. What was done last, putting on or taking off, tells which it is; before
 * either, it is off.
 */
export function callForConditions(trigger: ConditionTrigger, question: CalledQuestion): Call | null {
  const { id } = question.card;
  if (trigger.onCardIds.includes(id)) return callToPutOn(trigger, question);
  if (trigger.offCardIds.includes(id)) return callToTakeOff(trigger, question);
  return null;
}

function callToPutOn(trigger: ConditionTrigger, question: CalledQuestion): Call | null {
  if (isOn(trigger, question)) return null;
  const next = nextChanceFor([question.card.id], question);
  const stage = stagesFrom(trigger, question, question.pointIndex).find(
    (each) => each.pointIndex < next.pointIndex,
  );
  if (stage === undefined) return null;
  return {
    code: 'conditionAhead',
    pointIndex: stage.pointIndex,
    dueFrom: question.pointIndex,
    wantedBeforeNextChance: true,
    words: `${IN_WORDS[trigger.condition]} ${stage.stage.id} comes before ${next.name}`,
  };
}

function callToTakeOff(trigger: ConditionTrigger, question: CalledQuestion): Call | null {
  if (!isOn(trigger, question)) return null;
  const next = nextChanceFor(trigger.onCardIds, question);
  const until = trigger.offWhen === 'noneLeft' ? Number.POSITIVE_INFINITY : next.pointIndex;
  if (stagesFrom(trigger, question, question.pointIndex).some((each) => each.pointIndex < until)) return null;
  const what = IN_WORDS[trigger.condition];
  return {
    code: 'conditionOver',
    pointIndex: null,
    dueFrom: overSince(trigger, question),
    wantedBeforeNextChance: false,
    words: trigger.offWhen === 'noneLeft' ? `no ${what} is left` : `no ${what} comes before ${next.name}`,
  };
}

function isOn(trigger: ConditionTrigger, { facts, pointIndex }: CalledQuestion): boolean {
  const last = factsOf(facts, 'done', pointIndex)
    .filter(({ fact }) => [...trigger.onCardIds, ...trigger.offCardIds].includes(fact.cardId))
    .sort(compareTime)
    .at(-1);
  return last !== undefined && trigger.onCardIds.includes(last.fact.cardId);
}

/** Stages with the condition that are driven after a point. What the crew confirmed wins over the plan. */
function stagesFrom(
  { condition, least }: ConditionTrigger,
  { itinerary, runs, plannedConditions }: CalledQuestion,
  from: number,
): StageAhead[] {
  return itinerary.points.flatMap((stage, pointIndex) => {
    if (stage.kind !== 'stage' || pointIndex <= from) return [];
    const run = runs.get(stage.id);
    if (run?.driven === false) return [];
    const conditions = run?.conditions ?? plannedConditions.get(stage.id) ?? {};
    return (conditions[condition] ?? 0) >= least ? [{ pointIndex, stage }] : [];
  });
}

/** Taking off can only be late from after it was put on, and from after the last such stage up to here. */
function overSince(trigger: ConditionTrigger, question: CalledQuestion): number {
  const putOn = factsOf(question.facts, 'done', question.pointIndex).filter(({ fact }) =>
    trigger.onCardIds.includes(fact.cardId),
  );
  const driven = stagesFrom(trigger, question, -1).filter((each) => each.pointIndex <= question.pointIndex);
  return Math.max(putOn.at(-1)?.fact.pointIndex ?? 0, driven.at(-1)?.pointIndex ?? 0) + 1;
}

/** Where one of these cards can next be done after this point, or the end of the event. */
function nextChanceFor(
  cardIds: readonly string[],
  question: CalledQuestion,
): { pointIndex: number; name: string } {
  const { cards, services, laterFrom, itinerary, serviceName } = question;
  const able = cards.filter((card) => cardIds.includes(card.id));
  const next = services.slice(laterFrom).find((service) => able.some((card) => canBeDoneAt(card, service)));
  return next === undefined
    ? { pointIndex: itinerary.points.length, name: 'the finish' }
    : { pointIndex: next.inIndex, name: nameOfService(next.id, serviceName) };
}
