import { criticalPath, type Project } from '@halfshaft/bayplan';
import type { Chance } from '../faults/chance';
import { randomNetwork } from './random-network';

const RESOURCES = 4;
const LONGEST = 10;
const MOST_NEEDED = 10;

/** What a project is made after; the three measures of Kolisch, Sprecher & Drexl (1995). */
export interface Cell {
  size: number;
  /** Arcs that follow from no other, for each activity; source and sink count with their arcs. */
  complexity: number;
  /** The share of all pairs of an activity and a resource in which one needs the other. */
  factor: number;
  /** How much there is: 0 just enough for each activity alone, 1 enough for all to begin as early as the network lets them. */
  strength: number;
}

const COMPLEXITIES = [1.5, 1.8, 2.1];
const FACTORS = [0.25, 0.5, 0.75, 1];
const STRENGTHS = [0.2, 0.5, 0.7, 1];
/** PSPLIB's set of 120 activities is scarcer than its others. */
const STRENGTHS_OF_120 = [0.1, 0.2, 0.3, 0.4, 0.5];

/** All the cells of PSPLIB's set of so many activities (Kolisch & Sprecher 1996). */
export function cellsOf(size: number): Cell[] {
  const strengths = size === 120 ? STRENGTHS_OF_120 : STRENGTHS;
  return COMPLEXITIES.flatMap((complexity) =>
    FACTORS.flatMap((factor) => strengths.map((strength) => ({ size, complexity, factor, strength }))),
  );
}

/**
 * A project by chance, after a published recipe: Kolisch, Sprecher & Drexl (1995), "Characterization and generation of a
 * general class of resource-constrained project scheduling problems", Management Science 41(10), with the values of the
 * PSPLIB sets: four resources, durations and needs from 1 to 10, three activities at either end. Durations are units of time.
 */
export function randomProject({ size, complexity, factor, strength }: Cell, chance: Chance): Project {
  // Source and sink are left out of the project, and so are three arcs of each.
  const arcs = Math.round(complexity * (size + 2)) - 6;
  const before = randomNetwork(size, arcs, chance);
  const amounts = randomAmounts(size, factor, chance);
  const activities = [...before].map((others, number) => ({
    id: `${number + 1}`,
    duration: 1 + chance.whole(LONGEST),
    after: [...others].map((other) => ({ activity: `${other + 1}` })),
    needs: (amounts[number] ?? []).map((amount, resource) => ({ resource: `R${resource + 1}`, amount })),
  }));
  const early = criticalPath({
    resources: [],
    activities: activities.map((each) => ({ ...each, needs: [] })),
  });
  const resources = Array.from({ length: RESOURCES }, (_, resource) => {
    const needs = amounts.map((row) => row[resource] ?? 0);
    const most = Math.max(...needs);
    const peak = Math.max(
      ...early.times.map(({ earliestStart: now }) =>
        needs.reduce((sum, need, number) => {
          const times = early.times[number];
          return times && times.earliestStart <= now && now < times.earliestFinish ? sum + need : sum;
        }, 0),
      ),
    );
    return { id: `R${resource + 1}`, capacity: most + Math.round(strength * (peak - most)) };
  });
  return { resources, activities };
}

/** A need of each activity at least, then as many more as the factor asks for. */
function randomAmounts(size: number, factor: number, chance: Chance): number[][] {
  const pairs = Array.from({ length: size }, (_, number) =>
    chance.shuffled(Array.from({ length: RESOURCES }, (__, resource) => ({ number, resource }))),
  );
  const certain = pairs.flatMap((row) => row.slice(0, 1));
  const further = chance.shuffled(pairs.flatMap((row) => row.slice(1)));
  const needed = [...certain, ...further.slice(0, Math.round(factor * size * RESOURCES) - size)];
  const amounts = pairs.map((row) => row.map(() => 0));
  for (const { number, resource } of needed) {
    const row = amounts[number];
    if (row) row[resource] = 1 + chance.whole(MOST_NEEDED);
  }
  return amounts;
}
