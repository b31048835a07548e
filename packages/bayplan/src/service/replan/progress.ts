/** What has become of a task of a plan; of the others, nothing has. Times on the service's clock, in its units. */
export type Progress = DoneProgress | UnderWayProgress;

export interface DoneProgress {
  task: string;
  state: 'done';
  way: string;
  since: number;
  until: number;
}

export interface UnderWayProgress {
  task: string;
  state: 'underWay';
  way: string;
  since: number;
  /** Everyone who is on it now. */
  people: readonly string[];
}
