import { at } from '../../at';
import type { Chance } from '../../search/chance';
import { compareObjectives } from '../bay-plan';
import type { CompiledService } from '../compile-service';
import { LEFT } from '../generate/choose-work';
import { sideFor } from '../generate/forced-sides';
import { type Generated, type Genes, ServiceGenerator } from '../generate/service-generator';
import { servicePriorities } from '../generate/service-priorities';
import { type BreedingGround, breedingGroundOf } from './breeding-ground';
import { type Parent, varyGenes } from './vary-genes';

const PARENTS = 16;
const BLUR = 0.3;

interface Kept extends Parent {
  made: Generated;
}

/**
 * Breeds plans without an end, in the manner of {@link openSearch}: the best few are kept, and a child takes after the better
 * of two of them. The first ones come from latest starts, then from blurred ones. Yields how many schedules each cost, and the plan when it keeps every rule.
 */
export function* breedPlans(
  service: CompiledService,
  chance: Chance,
): Generator<{ cost: number; made: Generated | undefined }, never> {
  const generator = new ServiceGenerator(service);
  const ground = breedingGroundOf(service);
  const size = service.tasks.length;
  const child: Genes = {
    priorities: new Float64Array(size),
    ways: new Int32Array(size),
    sides: new Uint8Array(size).fill(1),
  };
  const kept: Kept[] = [];
  const first = servicePriorities(service);
  for (let number = 0; ; number += 1) {
    const parent = number < PARENTS ? undefined : pickBetterOfTwo(kept, chance);
    if (parent) varyGenes(ground, parent, chance, child);
    else begin(ground, first, number, chance, child);
    const before = generator.schedules;
    const made = generator.generate(child);
    if (made) keep(kept, { genes: copyOf(child), starts: generator.starts.slice(), made });
    yield { cost: generator.schedules - before, made: made?.broken === 0 ? made : undefined };
  }
}

/** Stage by stage, what must be done by latest start, the rest by worth; the second one all by latest start. Later ones blurred, and not all of it. */
function begin(
  ground: BreedingGround,
  first: Float64Array,
  number: number,
  chance: Chance,
  child: Genes,
): void {
  const { service, stages, forced, costs } = ground;
  const span = service.latest - service.earliest;
  const share = number < PARENTS / 2 ? 1 : chance.share();
  for (const { number: task, ways, must } of service.tasks) {
    const blur = number < 2 ? 0 : BLUR * span * chance.share();
    const best = ways.reduce((one, way, place) => (way.value > (ways[one]?.value ?? 0) ? place : one), 0);
    const stage = number === 1 ? 0 : at(stages, task);
    child.priorities[task] =
      blur + (stage === 0 ? at(first, task) : (1 + 2 * stage) * span + at(costs, task));
    child.ways[task] = must ? 0 : chance.share() < share ? best : LEFT;
    child.sides[task] = sideFor(forced, task, number > 1 && chance.share() < BLUR ? 0 : 1);
  }
}

function keep(kept: Kept[], one: Kept): void {
  const same = kept.some(
    ({ made, starts }) =>
      compare(made, one.made) === 0 && starts.every((start, task) => start === at(one.starts, task)),
  );
  if (same) return;
  kept.push(one);
  kept.sort((first, second) => compare(first.made, second.made));
  if (kept.length > PARENTS) kept.pop();
}

function compare(one: Generated, other: Generated): number {
  return one.broken - other.broken || compareObjectives(one.objective, other.objective);
}

function pickBetterOfTwo(kept: readonly Kept[], chance: Chance): Kept | undefined {
  if (kept.length === 0) return undefined;
  return kept[Math.min(chance.below(kept.length), chance.below(kept.length))];
}

function copyOf({ priorities, ways, sides }: Genes): Genes {
  return { priorities: priorities.slice(), ways: ways.slice(), sides: sides.slice() };
}
