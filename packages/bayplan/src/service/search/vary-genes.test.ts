import { describe, expect, it } from 'vitest';
import { Chance } from '../../search/chance';
import { compileService } from '../compile-service';
import { type Genes, ServiceGenerator } from '../generate/service-generator';
import type { ServiceTask } from '../service-model';
import { breedingGroundOf } from './breeding-ground';
import { type Parent, varyGenes } from './vary-genes';

const SIZE = 12;
const CHILDREN = 200;

/** One person, twelve tasks that take so long, and time for so much. */
function parentOf(
  outTime: number,
  low: number,
): { parent: Parent; ground: ReturnType<typeof breedingGroundOf> } {
  const duration = { low, likely: low, high: low };
  const tasks = Array.from({ length: SIZE }, (_, number): ServiceTask => {
    const ways = [{ id: 'way', duration, crew: [{ count: 1 }], value: 1 + number }];
    return { id: `task${number}`, car: 'car', ways };
  });
  const service = compileService({
    cars: [{ id: 'car', inTime: 0, outTime }],
    people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 99 }] }],
    places: [],
    tools: [],
    accesses: [],
    tasks,
  });
  const generator = new ServiceGenerator(service);
  const priorities = Float64Array.from({ length: SIZE }, (_, number) => (number * 5) % SIZE);
  const genes = { priorities, ways: new Int32Array(SIZE), sides: new Uint8Array(SIZE) };
  const made = generator.generate(genes);
  if (!made) throw new Error('It can be made.');
  return { parent: { genes, starts: generator.starts.slice(), made }, ground: breedingGroundOf(service) };
}

function childrenOf({ parent, ground }: ReturnType<typeof parentOf>): Genes[] {
  const chance = new Chance(1);
  return Array.from({ length: CHILDREN }, () => {
    const child = {
      priorities: new Float64Array(SIZE),
      ways: new Int32Array(SIZE),
      sides: new Uint8Array(SIZE),
    };
    varyGenes(ground, parent, chance, child);
    return child;
  });
}

const orderOf = ({ priorities }: Genes) =>
  [...priorities.keys()].toSorted((one, other) => (priorities[one] ?? 0) - (priorities[other] ?? 0));

/** Whether two orders are the same without some of what they order. */
function areAlike(one: readonly number[], other: readonly number[], apart: readonly number[]): boolean {
  const rest = (order: readonly number[]) => order.filter((task) => !apart.includes(task)).join();
  return rest(one) === rest(other);
}

describe('varyGenes', () => {
  it('changes the order of its parent in one stretch of time only', () => {
    const family = parentOf(96, 8);
    const order = orderOf(family.parent.genes);
    let changed = 0;
    for (const child of childrenOf(family)) {
      const places = orderOf(child).flatMap((task, place) => (task === order[place] ? [] : [place]));
      if (places.length === 0) continue;
      changed += 1;
      // At most 0.4 × 1.4 of the time, in which 7 of the 12 start.
      expect(Math.max(...places) - Math.min(...places)).toBeLessThan(7);
      expect(orderOf(child).toSorted((one, other) => one - other)).toEqual([...order.keys()]);
    }
    expect(changed).toBeGreaterThan(CHILDREN / 10);
  });

  it('gives something that was left a place and takes it from one other at most, in an order that is else the same', () => {
    const family = parentOf(14, 2);
    const order = orderOf(family.parent.genes);
    const left = order.filter((task) => !family.parent.made.decided[task]);
    const exchanged = childrenOf(family).filter((child) => {
      const now = orderOf(child);
      return left.some(
        (comes) =>
          now.indexOf(comes) < order.indexOf(comes) &&
          [...now.keys()].some((goes) => areAlike(now, order, [comes, goes]) && now.at(-1) === goes),
      );
    });
    expect(left.length).toBe(SIZE - 7);
    expect(exchanged.length).toBeGreaterThan(CHILDREN / 4);
  });
});
