import { at } from '../at';
import type { CompiledProject } from '../compile-project';
import { type Arcs, arcsOf } from './arcs';
import { Chooser } from './chooser';
import { Engine } from './engine';
import { read } from './int-list';
import { Learner } from './learner';
import { luby } from './luby';
import { NO_REASON } from './reasons';
import { projectTable } from './time-table';

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
  const { arcs, pairs } = arcsOf(project);
  const tables = Array.from(project.capacities, (_, resource) => projectTable(project, resource));
  const engine = new Engine(firstBounds(project, arcs, incumbent.makespan), arcs, tables);
  const chooser = new Chooser(project, pairs);
  const learner = new Learner(engine, (slot) => chooser.involvement.touch(slot));
  let deadline = incumbent.makespan;
  for (let round = 1; ; round += 1) {
    for (let left = FIRST_RESTART * luby(round); left > 0; left -= 1) {
      if (incumbent.makespan <= deadline) {
        deadline = incumbent.makespan - 1;
        engine.backTo(0);
        if (!setDeadline(engine, project, deadline)) return yield 'closed';
      }
      const shorter = descend(engine, chooser, incumbent, round % 2 === 0);
      if (shorter) readStarts(engine, project, incumbent);
      else if (!learner.learn()) return yield 'closed';
      chooser.involvement.fade();
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

function firstBounds({ size }: CompiledProject, { touching }: Arcs, horizon: number): Int32Array {
  const values = new Int32Array(touching.length);
  for (let slot = 1; slot < values.length; slot += 2) values[slot] = slot < 2 * size ? -horizon : -1;
  return values;
}

/** Every job ends by then. At level 0; false when that can't be. */
function setDeadline(engine: Engine, { size, durations }: CompiledProject, deadline: number): boolean {
  for (let job = 0; job < size; job += 1) {
    if (!engine.demand(2 * job + 1, at(durations, job) - deadline, NO_REASON)) return false;
  }
  return engine.begin();
}

function readStarts(engine: Engine, { size, durations }: CompiledProject, incumbent: Incumbent): void {
  incumbent.makespan = 0;
  for (let job = 0; job < size; job += 1) {
    const start = read(engine.trail.values, 2 * job);
    incumbent.starts[job] = start;
    incumbent.makespan = Math.max(incumbent.makespan, start + at(durations, job));
  }
}
