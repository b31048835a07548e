import type { Level } from '../bay-plan';
import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import { atLeast, atMost, Draft, isFalse, isTrue } from './draft';
import { encodeCars } from './encode-cars';
import { encodeHandOvers } from './encode-hand-overs';
import { encodeLinks } from './encode-links';
import { encodePeople } from './encode-people';
import { encodeSharing } from './encode-sharing';
import type { Term } from './linear';

/** The numbers that stand for a task. */
export interface TaskNumbers {
  task: CompiledTask;
  start: number;
  finish: number;
  done: number;
  ways: readonly WayNumbers[];
  /** Person by person a flag: takes part. Nobody's flag where nobody could. */
  works: ReadonlyMap<number, number>;
}

export interface WayNumbers {
  way: CompiledWay;
  taken: number;
  /** Crew by crew and person by person a flag: is in that crew. */
  crews: readonly ReadonlyMap<number, number>[];
}

/** A service as facts about numbers, without any bound on what a plan is worth. */
export interface Encoding {
  draft: Draft;
  tasks: readonly TaskNumbers[];
  orders: readonly Order[];
  /** Level by level what is summed up; less is better, so values count negatively. */
  sums: Readonly<Record<Level, readonly Term[]>>;
}

/**
 * Writes a service down as numbers with bounds, conditions on them and sums, such that every plan that keeps the rules is
 * a solution and every solution is such a plan.
 */
export function encodeService(service: CompiledService): Encoding {
  const draft = new Draft();
  const tasks = service.tasks.map((task) => encodeTask(draft, service, task));
  const orders = new Orders(draft, tasks);
  encodePeople(draft, service, tasks, orders);
  encodeLinks(draft, service, tasks, orders);
  encodeSharing(draft, service, tasks, orders);
  const { late, finish } = encodeCars(draft, service, tasks);
  const handOvers = encodeHandOvers(draft, service, tasks);
  const value = tasks.flatMap(({ ways }) =>
    ways.flatMap(({ way, taken }) => (way.value > 0 ? [{ slot: 2 * taken + 1, factor: way.value }] : [])),
  );
  return { draft, tasks, orders: orders.list, sums: { late, value, finish, handOvers } };
}

/** A flag that task number `first` is finished when task number `second` starts. */
export interface Order {
  first: number;
  second: number;
  flag: number;
}

/** Which of two tasks goes first, where that may matter: a flag "one is finished when the other starts" for each way round. */
export class Orders {
  /** All that were asked for. */
  readonly list: Order[] = [];
  readonly #draft: Draft;
  readonly #tasks: readonly TaskNumbers[];
  readonly #flags = new Map<number, number>();

  constructor(draft: Draft, tasks: readonly TaskNumbers[]) {
    this.#draft = draft;
    this.#tasks = tasks;
  }

  /** The flag that task number `first` is finished when task number `second` starts. */
  flag(first: number, second: number): number {
    const key = first * this.#tasks.length + second;
    const known = this.#flags.get(key);
    if (known !== undefined) return known;
    const flag = this.#draft.flag();
    this.#flags.set(key, flag);
    this.list.push({ first, second, flag });
    this.#draft.order(this.#tasks[first]?.finish ?? 0, this.#tasks[second]?.start ?? 0, 0, flag);
    return flag;
  }
}

function encodeTask(draft: Draft, service: CompiledService, task: CompiledTask): TaskNumbers {
  const start = draft.number(service.earliest, service.latest);
  const longest = Math.max(0, ...task.ways.map(({ duration }) => duration));
  const finish = draft.number(service.earliest, service.latest + longest);
  const done = draft.flag();
  if (task.must) draft.either(isTrue(done));
  if (task.mustNot) draft.either(isFalse(done));
  draft.whenAll([isTrue(done)], atLeast(start, task.earliest));
  draft.whenAll([isTrue(done)], atMost(finish, task.latest));
  if (task.start !== undefined) {
    draft.whenAll([isTrue(done)], atLeast(start, task.start));
    draft.whenAll([isTrue(done)], atMost(start, task.start));
  }
  const ways = task.ways.map((way) => encodeWay(draft, { start, finish, done }, way));
  draft.whenAll([isTrue(done)], ...ways.map(({ taken }) => isTrue(taken)));
  ways.forEach(({ taken }, place) => {
    for (const other of ways.slice(place + 1)) draft.either(isFalse(taken), isFalse(other.taken));
  });
  return { task, start, finish, done, ways, works: encodeWorks(draft, ways) };
}

function encodeWay(
  draft: Draft,
  { start, finish, done }: { start: number; finish: number; done: number },
  way: CompiledWay,
): WayNumbers {
  const taken = draft.flag();
  draft.whenAll([isTrue(taken)], isTrue(done));
  draft.order(start, finish, way.duration, taken);
  draft.order(finish, start, -way.duration, taken);
  const crews = way.crew.map(({ count, candidates }) => {
    const flags = new Map(candidates.map((person) => [person, draft.flag()]));
    for (const flag of flags.values()) draft.whenAll([isTrue(flag)], isTrue(taken));
    const members = [...flags.values()];
    draft.sumAtMost(
      members.map((flag) => ({ slot: 2 * flag, factor: 1 })),
      count,
    );
    draft.sumAtMost(
      [{ slot: 2 * taken, factor: count }, ...members.map((flag) => ({ slot: 2 * flag + 1, factor: 1 }))],
      0,
    );
    return flags;
  });
  return { way, taken, crews };
}

/** Someone takes part when in one crew of the way taken, and is in no other. */
function encodeWorks(draft: Draft, ways: readonly WayNumbers[]): Map<number, number> {
  const works = new Map<number, number>();
  const people = new Set(ways.flatMap(({ crews }) => crews.flatMap((crew) => [...crew.keys()])));
  for (const person of people) {
    const flag = draft.flag();
    const places = ways.flatMap(({ crews }) => crews.flatMap((crew) => crew.get(person) ?? []));
    for (const place of places) draft.whenAll([isTrue(place)], isTrue(flag));
    draft.whenAll([isTrue(flag)], ...places.map(isTrue));
    places.forEach((place, number) => {
      for (const other of places.slice(number + 1)) draft.either(isFalse(place), isFalse(other));
    });
    works.set(person, flag);
  }
  return works;
}
