import type { ThreePoint } from '../times/three-point';

/**
 * What is to be done in the services of a team's cars that share people, places and tools. All times and durations are
 * whole numbers of one unit that the caller chooses (seconds, minutes) on one clock; a stretch of time holds its first
 * moment but not its last.
 */
export interface Service {
  cars: readonly ServiceCar[];
  people: readonly ServicePerson[];
  places: readonly Place[];
  tools: readonly Tool[];
  accesses: readonly Access[];
  tasks: readonly ServiceTask[];
  /**
   * With what certainty, above 0 and below 1, each planned duration should suffice; without it, the plan takes what each
   * task needs on average (see {@link plannedDuration}).
   */
  certainty?: number;
}

export interface ServiceCar {
  id: string;
  /** Nothing at the car starts before. */
  inTime: number;
  /** By then everything should be finished; later is lateness. */
  outTime: number;
  /** By then everything must be finished, from the out-time on: the maximum lateness. Without it, the out-time. */
  latest?: number;
  /** What needs a cold car waits until then. */
  hotUntil?: number;
}

export interface ServicePerson {
  id: string;
  skills: readonly string[];
  /** When they are there; each task of theirs lies within one of these stretches. */
  hours: readonly Stretch[];
}

export interface Stretch {
  from: number;
  until: number;
}

/** Where people work. It holds so many of them at a time; a place at a car is that car's own place. */
export interface Place {
  id: string;
  room: number;
}

export interface Tool {
  id: string;
  /** How many there are. */
  count: number;
}

/**
 * A state of a car that some tasks need and one task brings about: on stands, a guard off, a cover open. It is brought about
 * once and shared; `opening` and `closing` are done exactly when a task that needs it is done or one of the two is under
 * way. Without an opening it is there already, and then the closing is always done; without a closing it stays.
 */
export interface Access {
  id: string;
  car: string;
  opening?: string;
  closing?: string;
}

export interface ServiceTask {
  id: string;
  car: string;
  /** Must be done. Otherwise it is done if there is time, for the value of its way. */
  mandatory?: boolean;
  /** The ways of doing it, at least one, of which one is taken. */
  ways: readonly Way[];
  after?: readonly ServiceLink[];
  notBefore?: number;
  /** Waits until the car is no longer hot. */
  cold?: boolean;
  /** While it runs nobody else works at the car. */
  fuelOpen?: boolean;
  /** Accesses that must be open throughout. */
  open?: readonly string[];
  /** Accesses that must be closed throughout: on its wheels is "stands" closed. */
  closed?: readonly string[];
  pin?: Pin;
  underWay?: UnderWay;
}

export interface Way {
  id: string;
  /** What it takes from start to finish with its whole crew; the planned duration is at least 1. */
  duration: ThreePoint;
  crew: readonly Crew[];
  place?: string;
  /** Each of them once; a tool of which two are needed stands here twice. */
  tools?: readonly string[];
  /** What it is worth, whole, from 0. */
  value?: number;
}

/** So many people with a skill, or any people. Everyone counts for one crew only. */
export interface Crew {
  skill?: string;
  count: number;
}

/** Starts from `lag` to `maxLag` after the finish of `task`; as soon and as late as it likes without them. Void if either is left out. */
export interface ServiceLink {
  task: string;
  lag?: number;
  maxLag?: number;
  /** Neither is done without the other. */
  together?: boolean;
}

/** What the manager has decided. Start, way and people hold if the task is done. */
export interface Pin {
  done?: boolean;
  start?: number;
  way?: string;
  /** They are among those who do it. */
  people?: readonly string[];
}

/** Started already: when, how, by whom, and when it will presumably be finished. Nothing of it can be planned otherwise. */
export interface UnderWay {
  since: number;
  until: number;
  way: string;
  people: readonly string[];
}
