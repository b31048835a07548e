import type { EpochSeconds } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import type { Snag, Task } from '@halfshaft/worklog';
import { cardTitle } from '../cards/card-title';
import type { JudgedCard } from '../service/judge-visit';
import { type CarCloses, lastSafeStart } from './last-safe-start';

/** One piece of work on the board. */
export interface BoardLine {
  task: Task;
  title: string;
  /** Null for a snag, whose minutes nobody knows. */
  startBy: EpochSeconds | null;
  /** Nobody began it in time, or nobody has finished it in time. */
  isLate: boolean;
  waitsForSignature: boolean;
}

export interface Board {
  /** What somebody must look at first, then by its last safe start. */
  lines: BoardLine[];
  /** Closed, and signed where that is asked for. */
  doneCount: number;
  /** May be done here, and nobody has taken it. */
  ifTimeCount: number;
}

export interface BoardQuestion {
  cards: readonly {
    card: Pick<JobCard, 'name' | 'kind' | 'place' | 'starterId' | 'seconds'>;
    judged: Pick<JudgedCard['judged'], 'verdict'>;
    task: Task;
  }[];
  snags: readonly { snag: Pick<Snag, 'words'>; task: Task }[];
  closes: CarCloses;
  now: EpochSeconds;
}

/**
 * What is still to be seen to on one car at one service: everything due and everything taken, snags, and what waits for
 * a second person.
 */
export function boardOf({ cards, snags, closes, now }: BoardQuestion): Board {
  const ofCards = cards.map(({ card, task }) => lineOf(task, cardTitle(card), lastSafeStart(card, closes)));
  const ofSnags = snags.map(({ snag, task }) => lineOf(task, `Snag: ${snag.words}`, null));
  const all = [...ofSnags, ...ofCards];
  const due = new Set(cards.filter(({ judged }) => judged.verdict === 'doNow').map(({ task }) => task.id));
  const isShown = ({ task, startBy, waitsForSignature }: BoardLine) =>
    waitsForSignature || isTaken(task) || (task.state === 'open' && (startBy === null || due.has(task.id)));
  return {
    lines: all.filter(isShown).sort(byUrgency),
    doneCount: all.filter(({ task, waitsForSignature }) => task.state === 'done' && !waitsForSignature)
      .length,
    ifTimeCount: cards.filter(({ judged, task }) => judged.verdict === 'ifTime' && task.state === 'open')
      .length,
  };

  function lineOf(task: Task, title: string, startBy: EpochSeconds | null): BoardLine {
    const waitsForSignature = task.state === 'done' && task.needsSignature && task.signedBy === null;
    // To say that one has begun is optional, so what is taken counts as begun: late only when it should be finished.
    const endBy = startBy === null || isTaken(task) ? closes.wheelsOnAt : startBy;
    const isLate = (task.state === 'open' || isTaken(task)) && now > endBy;
    return { task, title, startBy, isLate, waitsForSignature };
  }
}

export function isTaken({ state }: Pick<Task, 'state'>): boolean {
  return state === 'claimed' || state === 'underWay';
}

function byUrgency(one: BoardLine, other: BoardLine): number {
  const rank = ({ isLate, waitsForSignature }: BoardLine) => (isLate ? 0 : waitsForSignature ? 1 : 2);
  const startOf = ({ startBy }: BoardLine) => startBy ?? 0;
  return rank(one) - rank(other) || startOf(one) - startOf(other);
}
