import { type Conditions, dueAt, type ServiceWindow, segmentsBetween } from '@halfshaft/itinerary';
import type { Counter, LifingCard, Verdict } from '../model';
import type { CardQuestion } from '../questions';

/*
 * For tests only: wear and interval verdicts written a second time, slowly and plainly. A car is driven from point to
 * point, metre by metre and second by second, and every counter is put down in thousandths on each arrival. Only the
 * time a stage ends is taken from the itinerary, which estimates it.
 */

type Wear = Record<Counter, number>;

export function canDo(card: LifingCard, service: ServiceWindow): boolean {
  if (service.kind === 'remoteService' && card.remoteAllowed === false) return false;
  return !(service.allowedSeconds < card.leastServiceSeconds);
}

/** Wear in whole units on arrival at each point; before the card was last done, zero. */
export function driveSlowly(question: CardQuestion): Wear[] {
  const { itinerary, lastDone, services, card } = question;
  const { points } = itinerary;
  let stages = 0;
  let stageMetres = 0;
  let totalMetres = 0;
  let engineSeconds = 0;
  let serviceCount = 0;
  let days = 0;
  let events = 0;
  const isChance = (index: number) =>
    services.some((service) => service.inIndex === index && canDo(card, service));
  if (lastDone.pointIndex === null) {
    stages = 1000 * (lastDone.carried.stages ?? 0);
    stageMetres = 1000 * (lastDone.carried.stageMetres ?? 0);
    totalMetres = 1000 * (lastDone.carried.totalMetres ?? 0);
    engineSeconds = 1000 * (lastDone.carried.engineSeconds ?? 0);
    serviceCount = 1000 * (lastDone.carried.services ?? 0) + (isChance(0) ? 1000 : 0);
    days = 1000 * (lastDone.carried.days ?? 0) + 1000;
    events = 1000 * (lastDone.carried.events ?? 0);
  }
  const arrivals: Wear[] = [];
  const putDown = () => {
    const whole = (thousandths: number) => Math.floor(thousandths / 1000);
    arrivals.push({
      stages: whole(stages),
      stageMetres: whole(stageMetres),
      totalMetres: whole(totalMetres),
      engineSeconds: whole(engineSeconds),
      services: whole(serviceCount),
      days: whole(days),
      events: whole(events),
    });
  };
  putDown();
  for (let index = 1; index < points.length; index += 1) {
    const from = points[index - 1];
    const to = points[index];
    if (from === undefined || to === undefined) throw new Error('no such point');
    if (lastDone.pointIndex !== null && index - 1 < lastDone.pointIndex) {
      putDown();
      continue;
    }
    let roadSeconds = to.firstCarAt - from.firstCarAt;
    if (from.kind === 'stage') {
      const end = segmentsBetween(itinerary, index - 1, index)[0]?.endsAt ?? from.firstCarAt;
      const multiplier = slowMultiplier(question, from.id);
      for (let second = from.firstCarAt; second < end; second += 1) engineSeconds += multiplier;
      for (let metre = 0; metre < from.stageMetres; metre += 1) {
        stageMetres += multiplier;
        totalMetres += multiplier;
      }
      stages += multiplier;
      roadSeconds = to.firstCarAt - end;
    }
    const inService =
      from.kind === 'control' &&
      from.roles.some((role) => role === 'serviceIn' || role === 'remoteServiceIn');
    const overnight = to.leg !== from.leg;
    if (!inService && !overnight)
      for (let second = 0; second < roadSeconds; second += 1) engineSeconds += 1000;
    if (to.kind === 'control') for (let metre = 0; metre < to.roadMetres; metre += 1) totalMetres += 1000;
    if (overnight) days += 1000;
    if (isChance(index)) serviceCount += 1000;
    putDown();
  }
  return arrivals;
}

function slowMultiplier({ card, runs, plannedConditions }: CardQuestion, stageId: string): number {
  const run = runs.get(stageId);
  if (run !== undefined && !run.driven) return 0;
  const conditions: Conditions = run?.conditions ?? plannedConditions.get(stageId) ?? {};
  const excesses: number[] = [];
  for (const name of ['dust', 'water', 'rough', 'night', 'jumps'] as const) {
    const level = conditions[name];
    const factor = card.conditionFactors[name];
    if (level === undefined || level === 0 || factor === undefined || factor === 1000) continue;
    excesses.push((level / 1000) * (factor - 1000));
  }
  if (excesses.length === 0) return 1000;
  const total = card.combineConditions === 'sum' ? excesses.reduce((a, b) => a + b) : Math.max(...excesses);
  // Levels times factors have three decimals: put right what the division left behind the third.
  const exact = Math.round(total * 1000) / 1000;
  return Math.max(250, Math.min(3000, Math.floor(1000 + exact + 0.5)));
}

export interface SlowVerdict {
  verdict: Verdict;
  overdue: boolean;
  doableHere: boolean;
  /** [counter, limit, wear here, wear where it must last to], sorted. */
  limits: string[];
}

export function slowVerdict(question: CardQuestion): SlowVerdict {
  const { card, services, serviceIndex, itinerary, lastDone, position } = question;
  const here = services[serviceIndex];
  if (here === undefined) throw new Error('no such service');
  let lastsTo = itinerary.points.length - 1;
  for (let later = services.length - 1; later > serviceIndex; later -= 1) {
    const service = services[later];
    if (service !== undefined && canDo(card, service)) lastsTo = service.inIndex;
  }
  const arrivals = driveSlowly(question);
  let mustDo = false;
  let mayDo = false;
  let overdue = false;
  const limits: string[] = [];
  for (const { counter, every, tolerance } of card.intervals) {
    const now = arrivals[here.inIndex]?.[counter] ?? -1;
    const then = arrivals[lastsTo]?.[counter] ?? -1;
    limits.push(`${counter} ${every} ${now} ${then}`);
    if (now > every + tolerance) overdue = true;
    if (now >= every || then > every + tolerance) mustDo = true;
    else if (then > every) mayDo = true;
  }
  const doneHere = lastDone.pointIndex === here.inIndex;
  if (card.dateLimit !== null && !doneHere) {
    const now = dueAt(itinerary, here.inIndex, position);
    const then = dueAt(itinerary, lastsTo, position);
    limits.push(`date ${card.dateLimit.dueAt} ${now} ${then}`);
    if (now > card.dateLimit.dueAt) overdue = true;
    if (now >= card.dateLimit.dueAt || then > card.dateLimit.dueAt) mustDo = true;
  }
  const doableHere = canDo(card, here);
  const due: Verdict = mustDo ? 'doNow' : mayDo ? 'ifTime' : 'leave';
  return {
    verdict: doableHere && !doneHere ? due : 'leave',
    overdue,
    doableHere,
    limits: limits.sort(),
  };
}
