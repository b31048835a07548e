/**
 * A resource-constrained project: activities with whole durations that need amounts of shared, renewable resources and
 * wait for one another. Every activity is done once, without a break; all amounts hold from its start to its finish.
 *
 * Times and durations are whole numbers of one unit that the caller chooses (seconds, minutes); 0 is the earliest start.
 */
export interface Project {
  resources: readonly Resource[];
  /** Their order is their number: it breaks ties between equal priorities. */
  activities: readonly Activity[];
}

/** Something that is there in an amount and comes back when an activity finishes: people, a single jack, two bays. */
export interface Resource {
  id: string;
  /** How much of it there is at any time, a whole number from 0. */
  capacity: number;
}

export interface Activity {
  id: string;
  /** Whole, from 0. An activity of duration 0 is a milestone: its needs are ignored. */
  duration: number;
  needs: readonly Need[];
  after: readonly Precedence[];
}

export interface Need {
  resource: string;
  /** Whole, from 0, at most the capacity. */
  amount: number;
}

/** Starts no earlier than `lag` after `activity` has finished; without a lag, no earlier than its finish. */
export interface Precedence {
  activity: string;
  lag?: number;
}

/** When each activity starts, in the order of `project.activities`, and when the last one has finished. */
export interface Schedule {
  starts: readonly number[];
  makespan: number;
}
