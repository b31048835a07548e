import { describe, expect, it } from 'vitest';
import { compileService } from '../compile-service';
import type { ServiceTask } from '../service-model';
import { EITHER, forcedSides } from './forced-sides';
import { stagesOf } from './stages-of';

const ways = [{ id: 'way', crew: [{ count: 1 }], duration: { low: 1, likely: 1, high: 1 } }];
const task = (id: string, more: Partial<ServiceTask> = {}): ServiceTask => ({
  id,
  car: 'car',
  ways,
  ...more,
});
const compile = (...tasks: ServiceTask[]) =>
  compileService({
    cars: [{ id: 'car', inTime: 0, outTime: 9 }],
    people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 9 }] }],
    places: [],
    tools: [],
    accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }],
    tasks: [task('up'), task('down'), ...tasks],
  });
const open = { open: ['stands'] };
const closed = { closed: ['stands'] };

describe('forcedSides', () => {
  it('puts work on closed things before what is open and waits for it, near or far, and after what it waits for', () => {
    const service = compile(
      task('roll', closed),
      task('between', { after: [{ task: 'roll' }] }),
      task('hub', { ...open, after: [{ task: 'between' }] }),
      task('nuts', { ...closed, after: [{ task: 'hub' }] }),
      task('wash', closed),
    );
    expect([...forcedSides(service)]).toEqual([EITHER, EITHER, 0, EITHER, EITHER, 1, EITHER]);
  });
});

describe('stagesOf', () => {
  it('places first what must be done with all before it and both ends, then what needs something open', () => {
    const service = compile(
      task('look'),
      task('nuts', { mandatory: true, after: [{ task: 'look' }] }),
      task('hub', open),
      task('wash'),
    );
    expect([...stagesOf(service)]).toEqual([0, 0, 0, 0, 1, 2]);
  });
});
