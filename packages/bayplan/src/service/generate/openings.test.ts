import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { DoneTask } from '../check-bay-plan';
import { findAssignmentFaults } from '../check-people';
import { findSharingFaults } from '../check-sharing';
import { type CompiledTask, type CompiledWay, compileService } from '../compile-service';
import { anyService } from '../fixtures';
import type { Service } from '../service-model';
import { Openings } from './openings';
import { Placements } from './placements';

const HORIZON = 60;

/** Only what an opening depends on: people, tools, places and fuel. */
function withoutOrder(service: Service): Service {
  const tasks = service.tasks.map(({ underWay: _, pin: _pin, ...task }) => ({
    ...task,
    open: [],
    closed: [],
    after: [],
  }));
  return { ...service, accesses: [], tasks };
}

/** Every way of filling a way's seats, crew by crew. */
function* seatings({ crew }: CompiledWay): Generator<number[]> {
  const seats = crew.flatMap(({ count, candidates }) => Array.from({ length: count }, () => candidates));
  const fill = function* (taken: number[]): Generator<number[]> {
    const candidates = seats[taken.length];
    if (!candidates) yield taken;
    else for (const person of candidates) if (!taken.includes(person)) yield* fill([...taken, person]);
  };
  yield* fill([]);
}

function workOf(
  service: Service,
  { number }: CompiledTask,
  way: CompiledWay,
  start: number,
  seats: number[],
) {
  const task = service.tasks[number];
  if (!task) throw new Error('Every compiled task is one of the service.');
  const skills = way.crew.flatMap(({ count, skill }) => Array.from({ length: count }, () => skill));
  const people = seats.map((person, seat) => {
    const skill = skills[seat];
    return { person: service.people[person]?.id ?? '', ...(skill === undefined ? {} : { skill }) };
  });
  return { task, work: { task: task.id, way: way.id, start, finish: start + way.duration, people } };
}

function isFaultless(service: Service, done: readonly DoneTask[]): boolean {
  return findAssignmentFaults(service, done).length + findSharingFaults(service, done).length === 0;
}

describe('Openings', () => {
  it('finds the first moment at which anybody could do a task, as trying every moment and everybody does', () => {
    let found = 0;
    let nowhere = 0;
    fc.assert(
      fc.property(anyService({ most: 7 }), fc.array(fc.nat(6)), (busy, froms) => {
        const service = withoutOrder(busy);
        const compiled = compileService(service);
        const placements = new Placements(compiled);
        const openings = new Openings(placements, HORIZON);
        const done: DoneTask[] = [];
        for (const task of compiled.tasks) {
          const way = placements.wayOf(task.number);
          if (!way) throw new Error('Every task has a way.');
          const from = froms[task.number] ?? 0;
          const start = openings.find(task, from, Number.POSITIVE_INFINITY);
          const tried = Array.from({ length: HORIZON }, (_, later) => from + later).find((moment) =>
            [...seatings(way)].some((seats) =>
              isFaultless(service, [...done, workOf(service, task, way, moment, seats)]),
            ),
          );
          expect(start).toBe(tried ?? Number.POSITIVE_INFINITY);
          if (tried === undefined) nowhere += 1;
          if (tried === undefined) continue;
          openings.place(task.number, start);
          done.push(workOf(service, task, way, start, [...placements.peopleOn(task.number)]));
          expect(isFaultless(service, done)).toBe(true);
          found += 1;
        }
      }),
      { numRuns: 60 },
    );
    expect(found).toBeGreaterThan(60);
    expect(nowhere).toBeGreaterThan(0);
  });
});
