import type { StagePoint } from '@halfshaft/itinerary';
import type { LifingCard } from '../model';
import { canDo } from '../slow-wear/fixtures';
import type { Fact, Trigger } from '../triggers/model';
import type { TriggersQuestion } from '../triggers/questions';

/*
 * For tests only: the rules of triggers written a second time, slowly and plainly: the car goes from point to point,
 * the log is read aloud in order, and a note is made and struck out as things happen.
 */

/** Since when a card has been due, or null; and whether a service that would have done for it went by. */
export interface SlowCall {
  late: boolean;
}

type Of<K extends Trigger['kind']> = Extract<Trigger, { kind: K }>;

interface Log {
  question: TriggersQuestion;
  card: LifingCard;
  here: number;
  /** Facts at or before the point, as they are read aloud on the way. */
  at(point: number): Fact[];
}

export function slowCall(trigger: Trigger, card: LifingCard, question: TriggersQuestion): SlowCall | null {
  const here = question.services[question.serviceIndex]?.inIndex;
  if (here === undefined) throw new Error('no such service');
  const log: Log = {
    question,
    card,
    here,
    at: (point) => question.facts.filter((fact) => fact.pointIndex === point),
  };
  switch (trigger.kind) {
    case 'incident':
      return slowIncident(trigger, log);
    case 'jobDone':
      return trigger.where === 'service' ? slowFollower(trigger, log) : null;
    case 'nextConditions':
      return slowConditions(trigger, log);
    case 'newlyFitted':
      return slowNewPart(trigger, log);
    case 'temporaryRepair':
      return slowRepair(trigger, log);
  }
}

function usableAt({ question, card }: Log, point: number): boolean {
  return question.services.some((service) => service.inIndex === point && canDo(card, service));
}

/** Goes by every point from one to just before this service. */
function wentBy(log: Log, from: number): boolean {
  for (let point = from; point < log.here; point += 1) if (usableAt(log, point)) return true;
  return false;
}

function slowIncident(trigger: Of<'incident'>, log: Log): SlowCall | null {
  if (!trigger.cardIds.includes(log.card.id)) return null;
  let dueSince: number | null = null;
  let count = 0;
  let leg = 0;
  for (let point = 0; point <= log.here; point += 1) {
    const legHere = log.question.itinerary.points[point]?.leg ?? 0;
    if (legHere !== leg) count = 0;
    leg = legHere;
    for (const fact of log.at(point)) {
      if (fact.kind === 'done' && fact.cardId === log.card.id) dueSince = null;
      if (fact.kind !== 'incident' || !trigger.codes.includes(fact.code)) continue;
      count += 1;
      if (count >= trigger.times && dueSince === null) dueSince = point;
    }
  }
  return dueSince === null ? null : { late: wentBy(log, dueSince) };
}

function slowFollower(trigger: Of<'jobDone'>, log: Log): SlowCall | null {
  if (!trigger.cardIds.includes(log.card.id)) return null;
  let dueSince: number | null = null;
  for (let point = 0; point <= log.here; point += 1) {
    for (const fact of log.at(point)) {
      if (fact.kind !== 'done') continue;
      if (fact.cardId === log.card.id) dueSince = null;
      else if (trigger.afterCardIds.includes(fact.cardId) && dueSince === null) dueSince = point;
    }
  }
  return dueSince === null ? null : { late: wentBy(log, dueSince) };
}

function slowConditions(trigger: Of<'nextConditions'>, log: Log): SlowCall | null {
  const { points } = log.question.itinerary;
  let isOn = false;
  let changedAt = 0;
  let lastSuchStage = 0;
  for (let point = 0; point <= log.here; point += 1) {
    for (const fact of log.at(point)) {
      if (fact.kind !== 'done') continue;
      if (trigger.onCardIds.includes(fact.cardId)) {
        isOn = true;
        changedAt = point;
      } else if (trigger.offCardIds.includes(fact.cardId)) isOn = false;
    }
    const stage = points[point];
    if (stage?.kind === 'stage' && isSuch(trigger, log, stage)) lastSuchStage = point;
  }
  const puttingOn = trigger.onCardIds.includes(log.card.id);
  if (!puttingOn && !trigger.offCardIds.includes(log.card.id)) return null;
  if (puttingOn === isOn) return null;
  const toDoIt = log.question.cards.filter((card) =>
    puttingOn ? card.id === log.card.id : trigger.onCardIds.includes(card.id),
  );
  const lookOnlyToNextChance = puttingOn || trigger.offWhen === 'noneBeforeNextChance';
  let ahead = false;
  for (let point = log.here + 1; point < points.length; point += 1) {
    const service = log.question.services.find((each) => each.inIndex === point);
    const isChance = service !== undefined && toDoIt.some((card) => canDo(card, service));
    if (lookOnlyToNextChance && isChance) break;
    const stage = points[point];
    if (stage?.kind === 'stage' && isSuch(trigger, log, stage)) ahead = true;
  }
  if (puttingOn) return ahead ? { late: !usableAt(log, log.here) } : null;
  return ahead ? null : { late: wentBy(log, Math.max(changedAt, lastSuchStage) + 1) };
}

function isSuch({ condition, least }: Of<'nextConditions'>, { question }: Log, stage: StagePoint): boolean {
  const run = question.runs.get(stage.id);
  if (run !== undefined && !run.driven) return false;
  const level =
    run === undefined ? question.plannedConditions.get(stage.id)?.[condition] : run.conditions[condition];
  return level !== undefined && level >= least;
}

function slowNewPart(trigger: Of<'newlyFitted'>, log: Log): SlowCall | null {
  if (!trigger.cardIds.includes(log.card.id)) return null;
  let due = false;
  let late = false;
  for (const fact of log.question.facts) {
    if (fact.kind !== 'fitted' && fact.kind !== 'done') continue;
    if (!trigger.fittedCardIds.includes(fact.cardId)) continue;
    let stages = 0;
    let looked = false;
    let missed = false;
    for (let point = fact.pointIndex; point <= log.here; point += 1) {
      if (stages >= trigger.afterStages) {
        if (log.at(point).some((each) => each.kind === 'done' && each.cardId === log.card.id)) looked = true;
        if (point < log.here && usableAt(log, point)) missed = true;
      }
      const stage = log.question.itinerary.points[point];
      if (stage?.kind === 'stage' && log.question.runs.get(stage.id)?.driven !== false && point < log.here)
        stages += 1;
    }
    if (stages >= trigger.afterStages && !looked) {
      due = true;
      if (missed) late = true;
    }
  }
  return due ? { late } : null;
}

function slowRepair(trigger: Of<'temporaryRepair'>, log: Log): SlowCall | null {
  const looked = (point: number) =>
    log.at(point).some((fact) => fact.kind === 'done' && fact.cardId === log.card.id);
  if (looked(log.here)) return null;
  let madeAt: number | null = null;
  let late = false;
  for (let point = 0; point < log.here; point += 1) {
    if (madeAt !== null && usableAt(log, point)) late = true;
    if (madeAt !== null && looked(point)) late = false;
    for (const fact of log.at(point)) {
      if (fact.kind !== 'temporaryRepair') continue;
      if (fact.cardId !== log.card.id && !trigger.cardIds.includes(log.card.id)) continue;
      if (fact.madeGoodAt !== null && fact.madeGoodAt <= log.here) continue;
      if (madeAt === null) madeAt = point;
    }
  }
  return madeAt === null ? null : { late };
}
