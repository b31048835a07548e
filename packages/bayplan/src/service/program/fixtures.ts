import loadHighs from 'highs';
import { LEVELS, type Objective } from '../bay-plan';
import { plannedDuration } from '../planned-duration';
import type { Crew, Service, ServiceTask } from '../service-model';

const loading = loadHighs();

/** Without presolve: that of 1.15.3 finds some programs infeasible that have solutions (and so without it). */
const OPTIONS = { mip_rel_gap: 0, presolve: 'off' } as const;

/**
 * The best objective of a service by an integer program over every moment, solved by HiGHS (Huangfu & Hall 2018): nothing
 * of the bay planner is used but its types and the planned duration. Level by level, each held at its best for the
 * next. `undefined` when there is no plan. Times must be from 0.
 */
export async function bestByProgram(service: Service): Promise<Objective | undefined> {
  const highs = await loading;
  const program = writeProgram(service);
  const best: Objective = { late: 0, value: 0, finish: 0, handOvers: 0 };
  for (const level of LEVELS) {
    const goal = program.goals[level];
    const direction = level === 'value' ? 'Maximize' : 'Minimize';
    const result = highs.solve(toText(program, `${direction}\n obj: ${sum(goal)}`), OPTIONS);
    if (result.Status === 'Infeasible') return undefined;
    if (result.Status !== 'Optimal') throw new Error(`The program for ${level} ended as ${result.Status}.`);
    best[level] = Math.round(result.ObjectiveValue);
    program.rows.push(`${sum(goal)} ${level === 'value' ? '>=' : '<='} ${best[level]}`);
  }
  return best;
}

type Terms = readonly (readonly [factor: number, name: string])[];

interface Program {
  rows: string[];
  binaries: Set<string>;
  goals: Record<keyof Objective, Terms>;
}

/** One choice: a task done in a way from a moment on. */
interface Choice {
  name: string;
  task: ServiceTask;
  start: number;
  finish: number;
  heads: number;
  place: string | undefined;
  tools: readonly string[];
  value: number;
  /** Someone is in a crew of it. */
  seats: readonly { name: string; person: string }[];
}

/** Each name once. */
function sum(terms: Terms): string {
  const factors = new Map<string, number>();
  for (const [factor, name] of terms) factors.set(name, (factors.get(name) ?? 0) + factor);
  const left = [...factors].filter(([, factor]) => factor !== 0);
  if (left.length === 0) return '1 zero';
  return left.map(([name, factor]) => `${factor < 0 ? '-' : '+'} ${Math.abs(factor)} ${name}`).join(' ');
}

function toText({ rows, binaries }: Program, goal: string): string {
  const named = rows.map((row, number) => ` r${number}: ${row}`);
  return [goal, 'Subject To', ...named, 'Binaries', ` ${[...binaries].join(' ')}`, 'End'].join('\n');
}

function writeProgram(service: Service): Program {
  const program: Program = {
    rows: ['1 zero = 0'],
    binaries: new Set(['zero']),
    goals: { late: [], value: [], finish: [], handOvers: [] },
  };
  const choices = service.tasks.flatMap((task) => choicesOf(service, task, program));
  const horizon = 1 + Math.max(...service.cars.map(({ outTime, latest = outTime }) => latest));
  writePresence(service, choices, program);
  writeSharing(service, choices, program, horizon);
  writeOrder(service, choices, program, 2 * horizon);
  writeGoals(service, choices, program);
  return program;
}

function choicesOf(service: Service, task: ServiceTask, program: Program): Choice[] {
  const car = service.cars.find(({ id }) => id === task.car);
  if (!car) throw new Error(`${task.id} has no car.`);
  const { underWay, pin } = task;
  const choices: Choice[] = [];
  const latest = car.latest ?? car.outTime;
  for (const way of task.ways) {
    if (underWay && underWay.way !== way.id) continue;
    if (pin?.way !== undefined && pin.way !== way.id) continue;
    const duration = underWay
      ? underWay.until - underWay.since
      : plannedDuration(way.duration, service.certainty);
    const cold = task.cold ? (car.hotUntil ?? 0) : 0;
    const from = underWay ? underWay.since : Math.max(car.inTime, task.notBefore ?? 0, cold);
    for (let start = from; start + duration <= latest; start += 1) {
      if (underWay && start > from) break;
      if (pin?.start !== undefined && pin.start !== start) continue;
      const name = `u_${task.id}_${way.id}_${start}`;
      program.binaries.add(name);
      const seats = underWay
        ? underWay.people.map((person) => ({ name, person }))
        : writeSeats(service, way.crew, name, start, start + duration, program);
      const heads = underWay
        ? underWay.people.length
        : way.crew.reduce((total, { count }) => total + count, 0);
      choices.push({
        name,
        task,
        start,
        finish: start + duration,
        heads,
        place: way.place,
        tools: way.tools ?? [],
        value: way.value ?? 0,
        seats,
      });
    }
  }
  return choices;
}

function writeSeats(
  { people }: Service,
  crew: readonly Crew[],
  choice: string,
  start: number,
  finish: number,
  program: Program,
): Choice['seats'] {
  return crew.flatMap(({ skill, count }, number) => {
    const seats = people
      .filter(({ skills }) => skill === undefined || skills.includes(skill))
      .filter(({ hours }) => hours.some(({ from, until }) => from <= start && finish <= until))
      .map(({ id }) => ({ name: `z${choice}_${number}_${id}`, person: id }));
    for (const { name } of seats) program.binaries.add(name);
    program.rows.push(`${sum([...seats.map(({ name }) => [1, name] as const), [-count, choice]])} = 0`);
    return seats;
  });
}

function namesOf(choices: readonly Choice[], task: string | undefined, factor = 1): Terms {
  return choices.filter((one) => one.task.id === task).map(({ name }) => [factor, name] as const);
}

function writePresence(service: Service, choices: readonly Choice[], { rows }: Program): void {
  for (const { id, mandatory, pin, underWay, after = [] } of service.tasks) {
    rows.push(`${sum(namesOf(choices, id))} <= 1`);
    if (mandatory || underWay || pin?.done === true) rows.push(`${sum(namesOf(choices, id))} = 1`);
    if (pin?.done === false) rows.push(`${sum(namesOf(choices, id))} = 0`);
    for (const { task, together } of after) {
      if (together) rows.push(`${sum([...namesOf(choices, id), ...namesOf(choices, task, -1)])} = 0`);
    }
    for (const person of pin?.people ?? []) {
      const own = choices.filter((one) => one.task.id === id);
      const seats = own.flatMap((one) => one.seats.filter((seat) => seat.person === person));
      rows.push(`${sum([...seats.map(({ name }) => [1, name] as const), ...namesOf(choices, id, -1)])} >= 0`);
    }
  }
  for (const { id, opening, closing } of service.accesses) {
    const users = service.tasks.filter(({ open }) => open?.includes(id));
    for (const end of [opening, closing]) {
      if (end === undefined) continue;
      const begun = service.tasks.some((one) => one.underWay && [opening, closing].includes(one.id));
      if (begun || opening === undefined) {
        rows.push(`${sum(namesOf(choices, end))} = 1`);
        continue;
      }
      for (const user of users) {
        rows.push(`${sum([...namesOf(choices, end), ...namesOf(choices, user.id, -1)])} >= 0`);
      }
      const used = users.flatMap((user) => namesOf(choices, user.id, -1));
      rows.push(`${sum([...namesOf(choices, end), ...used])} <= 0`);
    }
  }
}

function writeSharing(
  service: Service,
  choices: readonly Choice[],
  { rows }: Program,
  horizon: number,
): void {
  for (let now = 0; now < horizon; now += 1) {
    const running = choices.filter(({ start, finish }) => start <= now && now < finish);
    for (const { id } of service.people) {
      const seats = running.flatMap((one) => one.seats.filter(({ person }) => person === id));
      if (seats.length > 1) rows.push(`${sum(seats.map(({ name }) => [1, name] as const))} <= 1`);
    }
    for (const { id, count } of service.tools) {
      const uses = running.map(
        ({ tools, name }) => [tools.filter((tool) => tool === id).length, name] as const,
      );
      rows.push(`${sum(uses.filter(([amount]) => amount > 0))} <= ${count}`);
    }
    for (const { id, room } of service.places) {
      const there = running.filter(({ place, heads }) => place === id && heads > 0);
      rows.push(`${sum(there.map(({ heads, name }) => [heads, name] as const))} <= ${room}`);
    }
    for (const fuel of service.tasks.filter(({ fuelOpen }) => fuelOpen)) {
      for (const other of service.tasks) {
        if (other === fuel || other.car !== fuel.car) continue;
        rows.push(`${sum([...namesOf(running, fuel.id), ...namesOf(running, other.id)])} <= 1`);
      }
    }
  }
}

/** `far` is more than any difference of times. */
function writeOrder(service: Service, choices: readonly Choice[], program: Program, far: number): void {
  const { rows, binaries } = program;
  const times = (id: string | undefined, at: 'start' | 'finish', factor: number): Terms =>
    choices.filter(({ task }) => task.id === id).map((one) => [factor * one[at], one.name] as const);
  /** start(second) − finish(first) ≥ lag, unless less than all of the flags (sums of terms that are 0 or 1) are up. */
  const order = (first: string, second: string, lag: number, flags: readonly Terms[]) => {
    const slack = flags.flat().map(([factor, name]) => [-far * factor, name] as const);
    const right = lag - far * flags.length;
    rows.push(`${sum([...times(second, 'start', 1), ...times(first, 'finish', -1), ...slack])} >= ${right}`);
  };
  for (const { id, after = [] } of service.tasks) {
    for (const { task, lag = 0, maxLag } of after) {
      const both = [namesOf(choices, id), namesOf(choices, task)];
      order(task, id, lag, both);
      if (maxLag === undefined) continue;
      const slack = both.flat().map(([factor, name]) => [far * factor, name] as const);
      rows.push(
        `${sum([...times(id, 'start', 1), ...times(task, 'finish', -1), ...slack])} <= ${maxLag + 2 * far}`,
      );
    }
  }
  for (const { id: access, opening, closing } of service.accesses) {
    if (opening !== undefined && closing !== undefined)
      order(opening, closing, 0, [namesOf(choices, closing)]);
    for (const { id, open, closed } of service.tasks) {
      if (open?.includes(access)) {
        if (opening !== undefined) order(opening, id, 0, [namesOf(choices, id)]);
        if (closing !== undefined) order(id, closing, 0, [namesOf(choices, id)]);
      }
      if (!closed?.includes(access)) continue;
      const before = `before_${access}_${id}`;
      const behind = `behind_${access}_${id}`;
      binaries.add(before).add(behind);
      if (opening === undefined) rows.push(`1 ${before} = 0`);
      else order(id, opening, 0, [[[1, before]]]);
      if (closing === undefined) rows.push(`1 ${behind} = 0`);
      else order(closing, id, 0, [[[1, behind]]]);
      // done(id) ≤ before + behind + (1 − done(opening)); what was open already has no opening.
      const opened = opening === undefined ? [] : namesOf(choices, opening, -1);
      const free = opening === undefined ? 0 : -1;
      rows.push(`${sum([[1, before], [1, behind], ...namesOf(choices, id, -1), ...opened])} >= ${free}`);
    }
  }
}

function writeGoals(service: Service, choices: readonly Choice[], { rows, binaries, goals }: Program): void {
  goals.value = choices.filter(({ value }) => value > 0).map(({ value, name }) => [value, name] as const);
  const finish: (readonly [number, string])[] = [];
  const late: (readonly [number, string])[] = [];
  for (const { id, inTime, outTime } of service.cars) {
    rows.push(`1 finish_${id} >= ${inTime}`, `1 late_${id} - 1 finish_${id} >= ${-outTime}`);
    for (const task of service.tasks.filter(({ car }) => car === id)) {
      const times = choices.filter((one) => one.task === task).map((one) => [-one.finish, one.name] as const);
      rows.push(`${sum([[1, `finish_${id}`], ...times])} >= 0`);
    }
    finish.push([1, `finish_${id}`]);
    late.push([1, `late_${id}`]);
  }
  goals.finish = finish;
  goals.late = late;
  const handed: (readonly [number, string])[] = [];
  for (const { id, after = [] } of service.tasks) {
    for (const { task } of after) {
      const name = `handed_${task}_${id}`;
      binaries.add(name);
      handed.push([1, name]);
      const seatsOf = (who: string, person: string): Terms =>
        choices
          .filter((one) => one.task.id === who)
          .flatMap((one) => one.seats.filter((seat) => seat.person === person))
          .map((seat) => [-1, seat.name] as const);
      const staying = service.people.map(({ id: person }) => {
        const both = `stays_${task}_${id}_${person}`;
        binaries.add(both);
        rows.push(`${sum([[1, both], ...seatsOf(id, person)])} <= 0`);
        rows.push(`${sum([[1, both], ...seatsOf(task, person)])} <= 0`);
        return [1, both] as const;
      });
      const manned = choices.filter((one) => (one.task.id === id || one.task.id === task) && one.heads > 0);
      const done = manned.map((one) => [-1, one.name] as const);
      rows.push(`${sum([[1, name], ...staying, ...done])} >= -1`);
    }
  }
  goals.handOvers = handed;
}
