import { at } from '../../at';
import type { Chance } from '../../search/chance';
import { LEFT } from '../generate/choose-work';
import type { Genes } from '../generate/service-generator';
import type { BreedingGround } from './breeding-ground';
import type { Parent } from './vary-genes';

/** How often something makes room for what comes in. */
const OUT = 0.8;
/** Of two drawn the better is taken. */
const DRAWS = 2;

/**
 * Gives something that the parent left a place somewhere in its order, rather what takes little time for its value. Mostly
 * something that takes much moves behind all; there it is done if there still is room.
 *
 * @param child has the parent's genes, its order as ranks from 0
 */
export function exchangeWork(ground: BreedingGround, parent: Parent, chance: Chance, child: Genes): void {
  const { costs } = ground;
  const { left, done } = listOptional(ground, parent);
  const comes = draw(left, chance, (one, other) => at(costs, one) < at(costs, other));
  if (comes === undefined) return;
  if (at(child.ways, comes) === LEFT) child.ways[comes] = 0;
  const behind = child.priorities.length;
  child.priorities[comes] = chance.below(behind) - 0.5;
  const goes = draw(done, chance, (one, other) => at(costs, one) > at(costs, other));
  if (goes !== undefined && chance.share() < OUT) child.priorities[goes] = behind;
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
