import { at } from '../../at';
import type { Chance } from '../../search/chance';
import { LEFT } from '../generate/choose-work';
import type { Genes } from '../generate/service-generator';
import type { BreedingGround } from './breeding-ground';
import type { Parent } from './vary-genes';

/** How often something makes room for what comes in, and how often the stages keep to themselves. */
const OUT = 0.8;
const IN_STAGES = 0.5;
/** Of two drawn the better is taken. */
const DRAWS = 2;
/** What comes in starts in this first part of the time. */
const EARLY = 0.7;

/**
 * The order of a child in which something that the parent left gets a place, rather what takes little time for its value.
 * Something that takes much moves behind all; there it is done if there still is room, and so are the others that are
 * left, what takes least first. Sometimes one stage after the other gets its place, so that nothing optional is in the way
 * of what must be done.
 */
export function exchangeWork(ground: BreedingGround, parent: Parent, chance: Chance, child: Genes): void {
  const { service, stages, costs } = ground;
  const span = service.latest - service.earliest;
  const gap = chance.share() < IN_STAGES ? 2 * span : 0;
  const behindAll = (task: number) => 6 * span + at(costs, task) * (0.5 + chance.share());
  const { left, done } = listOptional(ground, parent);
  for (const { number } of service.tasks) {
    child.priorities[number] = at(parent.starts, number) + gap * at(stages, number);
  }
  for (const task of left.filter((one) => at(stages, one) > 0)) {
    child.priorities[task] = behindAll(task);
    if (at(child.ways, task) === LEFT) child.ways[task] = 0;
  }
  const comes = draw(left, chance, (one, other) => at(costs, one) < at(costs, other));
  if (comes === undefined) return;
  if (at(child.ways, comes) === LEFT) child.ways[comes] = 0;
  const early = service.earliest + EARLY * span * chance.share();
  child.priorities[comes] = early + gap * at(stages, comes);
  const goes = draw(done, chance, (one, other) => at(costs, one) > at(costs, other));
  if (goes !== undefined && chance.share() < OUT) child.priorities[goes] = behindAll(goes);
}

function listOptional({ service, stages }: BreedingGround, { made }: Parent) {
  const optional = service.tasks.filter(({ must, mustNot }) => !must && !mustNot).map(({ number }) => number);
  const isLeft = (task: number) => made.decided[task] === undefined;
  return {
    left: optional.filter(isLeft),
    done: optional.filter((task) => !isLeft(task) && at(stages, task) > 0),
  };
}

function draw(
  from: readonly number[],
  chance: Chance,
  isBetter: (one: number, other: number) => boolean,
): number | undefined {
  const drawn = Array.from({ length: DRAWS }, () => from[chance.below(from.length)]);
  return drawn.reduce((best, next) =>
    best === undefined || (next !== undefined && isBetter(next, best)) ? next : best,
  );
}
