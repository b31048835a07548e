/** Who does what when at one service of one car, or why there is no such plan. Times in seconds from the in-time. */
export type VisitProposal =
  | {
      kind: 'plan';
      /** By start. */
      rows: readonly VisitRow[];
      /** Before the out-time; below zero by how much the car leaves too late. */
      spareSeconds: number;
      /** In the order of the question. */
      left: readonly VisitLeft[];
    }
  | { kind: 'noPlan'; sentences: readonly string[] };

export interface VisitRow {
  /** Of the card; of no card for what the whole car waits for. */
  id: string;
  /** The car goes up on stands, or down on its wheels. */
  step: 'up' | 'down' | null;
  start: number;
  finish: number;
  people: readonly string[];
  /** Started later than that, the car leaves later than planned or than its out-time. */
  startBy: number;
  /** Who did what comes right before it, where none of them goes on with it. */
  takesOverFrom: readonly string[];
}

export interface VisitLeft {
  id: string;
  /** Why, in one sentence for a mechanic. */
  sentence: string;
}
