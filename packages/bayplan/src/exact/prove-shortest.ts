import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import { Chooser } from './chooser';
import { Engine } from './engine';
import { read } from './int-list';
import { Learner } from './learner';

const FIRST_RESTART = 50;
const CLAUSES_KEPT = 4000;

/** The shortest schedule known, in the project's own direction of time; others may shorten it between two descents. */
export interface Incumbent {
  starts: Int32Array;
  makespan: number;
}

/**
 * `nothing`: a contradiction was met and something learned from it. `shorter`: `incumbent` is now shorter.
 * `closed`: nothing shorter than the incumbent exists.
 */
export type Descent = 'nothing' | 'shorter' | 'closed';

/**
 * An exact search for something shorter than the incumbent, descent by descent: decide, conclude, and when two conclusions
 * contradict each other, learn why and go back (lazy clause generation: Ohrimenko, Stuckey & Codish 2009; for scarce
 * resources Schutt, Feydy, Stuckey & Wallace 2011). Conclusions come from what waits for what, from pairs that can't run
 * side by side, from the time-table of each resource and from what was learned. Starts afresh ever more rarely (Luby,
 * Sinclair & Zuckerman 1993), by the two ways of {@link Chooser} in turn.
 *
 * A descent gives each job a start at most once before it ends, so it counts as one schedule, finished or not.
 */
export function* proveShortest(project: CompiledProject, incumbent: Incumbent): Generator<Descent> {
  const engine = new Engine(project, incumbent.makespan);
  const chooser = new Chooser(project, engine.trail.values.length >> 1);
  const learner = new Learner(engine, (slot) => chooser.touch(slot));
  let deadline = incumbent.makespan;
  for (let round = 1; ; round += 1) {
    for (let left = FIRST_RESTART * luby(round); left > 0; left -= 1) {
      if (incumbent.makespan <= deadline) {
        deadline = incumbent.makespan - 1;
        engine.backTo(0);
        if (!engine.setDeadline(deadline)) return yield 'closed';
      }
      const shorter = descend(engine, chooser, incumbent, round % 2 === 0);
      if (shorter) readStarts(engine, incumbent);
      else if (!learner.learn()) return yield 'closed';
      chooser.fade();
      yield shorter ? 'shorter' : 'nothing';
    }
    engine.backTo(0);
    if (!engine.propagate()) return yield 'closed';
    engine.settle();
    engine.clauses.thin(CLAUSES_KEPT);
  }
}

/** Decides and concludes until a contradiction, or until every start is known: then true. */
function descend(engine: Engine, chooser: Chooser, { starts }: Incumbent, byWeight: boolean): boolean {
  while (engine.propagate()) {
    if (!chooser.decide(engine, starts, byWeight)) return true;
  }
  return false;
}

function readStarts(engine: Engine, incumbent: Incumbent): void {
  const { size, durations } = engine.project;
  incumbent.makespan = 0;
  for (let job = 0; job < size; job += 1) {
    const start = read(engine.trail.values, 2 * job);
    incumbent.starts[job] = start;
    incumbent.makespan = Math.max(incumbent.makespan, start + at(durations, job));
  }
}

/** 1 1 2 1 1 2 4 1 1 2 1 1 2 4 8 … */
function luby(round: number): number {
  let power = 1;
  while (2 * power - 1 < round) power *= 2;
  return 2 * power - 1 === round ? power : luby(round - power + 1);
}
