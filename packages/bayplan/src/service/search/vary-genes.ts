import { at } from '../../at';
import type { Chance } from '../../search/chance';
import type { CompiledService } from '../compile-service';
import { LEFT } from '../generate/choose-work';
import type { Generated, Genes } from '../generate/service-generator';
import type { BreedingGround } from './breeding-ground';
import { exchangeWork } from './exchange-work';
import { sideFor } from './forced-sides';

const WINDOW = 0.4;
const OTHER_CHOICE = 0.5;
const OTHER_SIDE = 0.15;
const EXCHANGE = 0.6;

/** A plan kept to make others from: its genes, with its starts for priorities. */
export interface Parent {
  genes: Genes;
  starts: Int32Array;
  made: Generated;
}

/**
 * The genes of a child: those of its parent, except that something left is exchanged for something done, or that in one
 * stretch of time the order is shuffled (see `breed`) and often one task is done another way, or is left or done after all.
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
  if (made.decided.some((one) => !one) && chance.share() < EXCHANGE) {
    exchangeWork(ground, { genes, starts, made }, chance, child);
    return;
  }
  const span = Math.max(1, service.latest - service.earliest);
  const width = WINDOW * span * (WINDOW + chance.share());
  const from = service.earliest + chance.share() * span - width / 2;
  for (let task = 0; task < starts.length; task += 1) {
    const start = at(starts, task);
    const inside = start >= from && start < from + width;
    child.priorities[task] = inside ? from + width * chance.share() : start;
  }
  if (chance.share() < OTHER_CHOICE) changeWay(service, chance, child.ways);
  if (chance.share() < OTHER_SIDE) {
    const task = chance.below(starts.length);
    child.sides[task] = sideFor(forced, task, 1 - at(child.sides, task));
  }
}

function changeWay({ tasks }: CompiledService, chance: Chance, ways: Int32Array): void {
  const free = tasks.filter(({ must, ways: known }) => !must || known.length > 1);
  const task = free[chance.below(Math.max(1, free.length))];
  if (!task) return;
  const choices = task.ways.length + (task.must ? 0 : 1);
  ways[task.number] = chance.below(choices) + (task.must ? 0 : LEFT);
}
