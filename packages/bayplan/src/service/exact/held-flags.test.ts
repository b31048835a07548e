import { describe, expect, it } from 'vitest';
import { Chance } from '../../search/chance';
import { compileService } from '../compile-service';
import { judgeWork } from '../judge-work';
import type { Service, ServiceTask } from '../service-model';
import { encodeService } from './encode-service';
import { heldFlags } from './held-flags';
import { pickFree } from './pick-free';

const ways = [{ id: 'way', crew: [{ count: 1 }], duration: { low: 2, likely: 2, high: 2 } }];
const task = (id: string, more: Partial<ServiceTask> = {}): ServiceTask => ({
  id,
  car: 'car',
  ways,
  ...more,
});

/** Ada does oil and pads, Ben wash at the same time as oil; wax is left. */
function planned() {
  const service: Service = {
    cars: [{ id: 'car', inTime: 0, outTime: 9 }],
    people: ['Ada', 'Ben'].map((id) => ({ id, skills: [], hours: [{ from: 0, until: 9 }] })),
    places: [],
    tools: [],
    accesses: [],
    tasks: [task('oil'), task('pads'), task('wash'), task('wax')],
  };
  const compiled = compileService(service);
  const at = (start: number, person: number) => ({ way: 0, start, people: [[person]] });
  const solution = judgeWork(compiled, [at(0, 0), at(2, 0), at(0, 1), undefined]);
  return { compiled, solution, encoding: encodeService(compiled) };
}

describe('heldFlags', () => {
  it('holds ways, people, and the order of what the same people do, of all that is not free', () => {
    const { solution, encoding } = planned();
    const { tasks, orders } = encoding;
    const seatOf = (number: number, person: number) => tasks[number]?.ways[0]?.crews[0]?.get(person) ?? -1;
    const takenOf = (number: number) => tasks[number]?.ways[0]?.taken ?? -1;
    const order = orders.find(({ first, second }) => first === 0 && second === 1)?.flag ?? -1;
    const all = [takenOf(0), seatOf(0, 0), takenOf(1), seatOf(1, 0), takenOf(2), seatOf(2, 1), order];
    expect(heldFlags(encoding, solution, new Set())).toEqual(all);
    expect(heldFlags(encoding, solution, new Set([1]))).toEqual([
      takenOf(0),
      seatOf(0, 0),
      takenOf(2),
      seatOf(2, 1),
    ]);
  });
});

describe('pickFree', () => {
  it('picks so much of what is done, whatever it goes by, and never what is left', () => {
    const { compiled, solution } = planned();
    const chance = new Chance(3);
    const seen = new Set<string>();
    for (let time = 0; time < 60; time += 1) {
      const free = pickFree(compiled, solution, 0.5, chance);
      expect(free.size).toBe(2);
      expect(free.has(3)).toBe(false);
      seen.add([...free].toSorted().join());
    }
    expect(seen).toEqual(new Set(['0,1', '0,2', '1,2']));
    expect(pickFree(compiled, solution, 1, chance).size).toBe(3);
  });
});
