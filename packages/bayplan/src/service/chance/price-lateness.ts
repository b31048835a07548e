import { type CarOutlook, lateMinutes, type PlanOutlook } from './simulate-plan';

/** What an event takes for leaving service late, as it prints it. */
export interface LatenessRule {
  /** Units of the service's time in a minute: 60 where it counts seconds. */
  unitsPerMinute: number;
  /** Seconds of penalty for each whole minute late; 0 where lateness within the maximum costs nothing. */
  secondsPerMinute: number;
  /** Whole minutes that may be lost here, with what is lost already taken off; over that the car is out. Null: no limit. */
  maximumMinutes: number | null;
  /** Seconds that being over the maximum counts for: a fixed penalty, or what the crew would give to stay in the event. */
  overMaximumSeconds: number;
}

export interface LatenessPrice {
  /** Expected seconds, all together. */
  seconds: number;
  /** Of these, for minutes within the maximum. */
  withinSeconds: number;
  /** How likely it is over the maximum, from 0 to 1. The seconds hold this times what being over counts for. */
  overChance: number;
}

/**
 * Seconds for so many whole minutes late: so much a minute up to the maximum, and over it the cliff instead.
 *
 * @throws RangeError when a number of the rule is below 0 or a minute has no length
 */
export function penaltyFor(minutes: number, rule: LatenessRule): number {
  refuseBrokenRule(rule);
  return isOver(minutes, rule) ? rule.overMaximumSeconds : minutes * rule.secondsPerMinute;
}

/**
 * What a car's lateness costs on average under the event's rule. A begun minute isn't counted: a car due at 13:27 is on
 * time until 13:27:59.
 *
 * @throws RangeError as {@link penaltyFor}
 * @example
 * priceLateness(car, { unitsPerMinute: 60, secondsPerMinute: 10, maximumMinutes: 15, overMaximumSeconds: 1800 })
 * // { seconds: 13, withinSeconds: 4, overChance: 0.005 }
 */
export function priceLateness(car: CarOutlook, rule: LatenessRule): LatenessPrice {
  refuseBrokenRule(rule);
  let withinSeconds = 0;
  let overChance = 0;
  for (const [minutes, share] of lateMinutes(car, rule.unitsPerMinute).entries()) {
    if (isOver(minutes, rule)) overChance += share;
    else withinSeconds += share * penaltyFor(minutes, rule);
  }
  return { seconds: withinSeconds + overChance * rule.overMaximumSeconds, withinSeconds, overChance };
}

/** The expected seconds of a plan: those of all its cars, each under its own rule. */
export function pricePlan({ cars }: PlanOutlook, ruleOf: (car: string) => LatenessRule): number {
  return cars.reduce((sum, car) => sum + priceLateness(car, ruleOf(car.car)).seconds, 0);
}

function isOver(minutes: number, { maximumMinutes }: LatenessRule): boolean {
  return maximumMinutes !== null && minutes > maximumMinutes;
}

function refuseBrokenRule({
  unitsPerMinute,
  secondsPerMinute,
  maximumMinutes,
  overMaximumSeconds,
}: LatenessRule): void {
  const numbers = [secondsPerMinute, maximumMinutes ?? 0, overMaximumSeconds];
  if (unitsPerMinute > 0 && numbers.every((number) => number >= 0 && Number.isFinite(number))) return;
  throw new RangeError(
    'priceLateness: the numbers of the rule must be from 0, and a minute must have length.',
  );
}
