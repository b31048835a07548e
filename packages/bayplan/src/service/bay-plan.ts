/** Who does what when. */
export interface BayPlan {
  /** In the order of the service's tasks. */
  work: readonly PlannedWork[];
  /** The tasks that are not done. */
  left: readonly string[];
  objective: Objective;
}

export interface PlannedWork {
  task: string;
  way: string;
  start: number;
  finish: number;
  people: readonly Assigned[];
}

/** Someone, and for which skill of the crew; without a skill, for what anyone can do. */
export interface Assigned {
  person: string;
  skill?: string;
}

/**
 * How good a plan is, the first level first: a better first level is worth any loss in the others. What is mandatory is
 * always done, or there is no plan.
 */
export interface Objective {
  /** By how much the cars are finished after their out-times, all together; less is better. */
  late: number;
  /** The values of the ways taken; more is better. */
  value: number;
  /** The times at which the cars are finished (the in-time of a car without work), all together; less is better. */
  finish: number;
  /** How often a task follows another by a link and nobody stays; less is better. */
  handOvers: number;
}

export const LEVELS = ['late', 'value', 'finish', 'handOvers'] as const satisfies (keyof Objective)[];

export type Level = (typeof LEVELS)[number];

/** Below 0 when `one` is the better, above 0 when `other` is, 0 when they are equally good. */
export function compareObjectives(one: Objective, other: Objective): number {
  for (const level of LEVELS) {
    if (one[level] !== other[level])
      return level === 'value' ? other.value - one.value : one[level] - other[level];
  }
  return 0;
}
