import type { CompiledProject } from '../compile-project';
import { type Incumbent, proveShortest } from '../exact/prove-shortest';
import { mirrorStarts } from '../generate/mirror-starts';
import { bothSides } from '../generate/side';
import type { Chance } from './chance';
import { breedSchedules, type Made } from './population';

/** So many schedules are bred before the exact search begins: it proves faster what it need not find. */
const BRED_FIRST = 300;

/**
 * Breeding and exact search in turn, schedule by schedule; both shorten the same incumbent. Yields after every schedule
 * whether the incumbent is now known to be the shortest. Where its caller pauses makes no difference to what comes next.
 */
export function* alternate(
  project: CompiledProject,
  incumbent: Incumbent,
  chance: Chance,
): Generator<boolean, never> {
  const sides = bothSides(project);
  const breeding = breedSchedules(sides, chance);
  const breedOne = () => keepShorter(incumbent, breeding.next().value, sides[1].project);
  for (let bred = 0; bred < BRED_FIRST; bred += 1) {
    breedOne();
    yield false;
  }
  for (const descent of proveShortest(project, incumbent)) {
    yield descent === 'closed';
    breedOne();
    yield false;
  }
  for (;;) yield true;
}

function keepShorter(
  incumbent: Incumbent,
  { side, starts, makespan }: Made,
  backward: CompiledProject,
): void {
  if (makespan >= incumbent.makespan) return;
  incumbent.makespan = makespan;
  if (side.project === backward) mirrorStarts(backward, starts, makespan, incumbent.starts);
  else incumbent.starts.set(starts);
}
