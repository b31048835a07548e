import { at } from '../../at';
import type { Chance } from '../../search/chance';
import type { CompiledService } from '../compile-service';
import { LEFT } from '../generate/choose-work';
import { sideFor } from '../generate/forced-sides';
import type { Generated, Genes } from '../generate/service-generator';
import type { BreedingGround } from './breeding-ground';
import { exchangeWork } from './exchange-work';

const WINDOW = 0.4;
const OTHER_CHOICE = 0.5;
const OTHER_SIDE = 0.15;
const EXCHANGE = 0.6;

/** A plan kept to make others from: what it was made from, and when everything starts in it. */
export interface Parent {
  genes: Genes;
  starts: Int32Array;
  made: Generated;
}

/**
 * The genes of a child: those of its parent, except that something left is exchanged for something done, or that what starts
 * in one stretch of time changes places in the order and often one task is done another way, or is left or done after all.
 *
 * The order is the one that the parent was made in: made again in the order of its starts a plan may change throughout,
 * since people who can do different work are then given away otherwise, and a small step would be none.
 */
export function varyGenes(
  ground: BreedingGround,
  { genes, starts, made }: Parent,
  chance: Chance,
  child: Genes,
): void {
  const { service, forced } = ground;
  child.ways.set(genes.ways);
  child.sides.set(genes.sides);
  rankInto(child.priorities, genes.priorities);
  if (made.decided.some((one) => !one) && chance.share() < EXCHANGE) {
    exchangeWork(ground, { genes, starts, made }, chance, child);
    return;
  }
  const span = Math.max(1, service.latest - service.earliest);
  const width = WINDOW * span * (WINDOW + chance.share());
  const from = service.earliest + chance.share() * span - width / 2;
  const inside = [...starts.keys()].filter(
    (task) => at(starts, task) >= from && at(starts, task) < from + width,
  );
  shuffle(child.priorities, inside, chance);
  if (chance.share() < OTHER_CHOICE) changeWay(service, chance, child.ways);
  if (chance.share() < OTHER_SIDE) {
    const task = chance.below(starts.length);
    child.sides[task] = sideFor(forced, task, 1 - at(child.sides, task));
  }
}

/** The place of each in the order, from 0; of two equal ones the first goes first, as when a plan is made. */
function rankInto(ranks: Float64Array, priorities: Float64Array): void {
  const order = [...priorities.keys()].sort(
    (one, other) => at(priorities, one) - at(priorities, other) || one - other,
  );
  order.forEach((task, place) => {
    ranks[task] = place;
  });
}

/** Gives the ranks of some tasks to one another, every order as likely (Fisher & Yates 1938). */
function shuffle(ranks: Float64Array, tasks: readonly number[], chance: Chance): void {
  for (let place = tasks.length - 1; place > 0; place -= 1) {
    const one = tasks[place] ?? 0;
    const other = tasks[chance.below(place + 1)] ?? 0;
    [ranks[one], ranks[other]] = [at(ranks, other), at(ranks, one)];
  }
}

function changeWay({ tasks }: CompiledService, chance: Chance, ways: Int32Array): void {
  const free = tasks.filter(({ must, ways: known }) => !must || known.length > 1);
  const task = free[chance.below(Math.max(1, free.length))];
  if (!task) return;
  const choices = task.ways.length + (task.must ? 0 : 1);
  ways[task.number] = chance.below(choices) + (task.must ? 0 : LEFT);
}
