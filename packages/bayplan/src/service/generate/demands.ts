import type { CompiledService, CompiledTask, CompiledWay } from '../compile-service';
import { addPerson, wordsFor } from './people-set';

/** What doing a task one way takes of what there is, as cells of a row of a {@link ServiceTimeline}. */
export interface Demand {
  duration: number;
  heads: number;
  /** The set of those who could sit on one of the seats. */
  able: Int32Array;
  /** The task fits only where what is in each cell with `amounts` more stays within `limits`. */
  checked: Int32Array;
  amounts: Float64Array;
  limits: Float64Array;
  /** While it runs there is so much more in each cell. */
  booked: Int32Array;
  uses: Int32Array;
}

/** Where in a row each thing is counted. First come the people, as a set. */
export interface Columns {
  words: number;
  tools: number;
  places: number;
  /** For each car how much runs at it, then how much of that has fuel open. */
  cars: number;
  width: number;
}

export function columnsOf({ service, cars }: CompiledService): Columns {
  const tools = wordsFor(service.people.length);
  const places = tools + service.tools.length;
  const atCars = places + service.places.length;
  return { words: tools, tools, places, cars: atCars, width: atCars + 2 * cars.length };
}

/** Task by task and way by way. */
export function demandsOf(service: CompiledService): Demand[][] {
  return service.tasks.map((task) => task.ways.map((way) => demandOf(service, task, way)));
}

function demandOf(service: CompiledService, task: CompiledTask, way: CompiledWay): Demand {
  const shares = [...toolsOf(service, way), ...placeOf(service, way), ...fuelOf(service, task)];
  const checks = shares.filter(({ limit }) => Number.isFinite(limit));
  const uses = shares.filter(({ amount }) => amount > 0);
  return {
    duration: way.duration,
    heads: way.heads,
    able: ableOf(service, way),
    checked: Int32Array.from(checks, ({ cell }) => cell),
    amounts: Float64Array.from(checks, ({ amount }) => amount),
    limits: Float64Array.from(checks, ({ limit }) => limit),
    booked: Int32Array.from(uses, ({ cell }) => cell),
    uses: Int32Array.from(uses, ({ amount }) => amount),
  };
}

interface Share {
  cell: number;
  amount: number;
  limit: number;
}

function toolsOf(service: CompiledService, { tools }: CompiledWay): Share[] {
  const columns = columnsOf(service);
  return service.service.tools
    .map(({ count }, tool) => ({ cell: columns.tools + tool, amount: tools[tool] ?? 0, limit: count }))
    .filter(({ amount }) => amount > 0);
}

function placeOf(service: CompiledService, { place, heads }: CompiledWay): Share[] {
  const room = service.service.places[place ?? -1]?.room;
  if (place === undefined || room === undefined || heads === 0) return [];
  return [{ cell: columnsOf(service).places + place, amount: heads, limit: room }];
}

/** What has fuel open is alone at its car; anything else only keeps away from that. */
function fuelOf(service: CompiledService, { car, fuelOpen }: CompiledTask): Share[] {
  if (!service.tasks.some((task) => task.car === car && task.fuelOpen)) return [];
  const running = columnsOf(service).cars + 2 * car;
  const withFuelOpen = running + 1;
  return fuelOpen
    ? [
        { cell: running, amount: 1, limit: 1 },
        { cell: withFuelOpen, amount: 1, limit: Number.POSITIVE_INFINITY },
      ]
    : [
        { cell: running, amount: 1, limit: Number.POSITIVE_INFINITY },
        { cell: withFuelOpen, amount: 0, limit: 0 },
      ];
}

function ableOf({ service: { people } }: CompiledService, { crew }: CompiledWay): Int32Array {
  const able = new Int32Array(wordsFor(people.length));
  for (const { count, candidates } of crew) {
    if (count > 0) for (const person of candidates) addPerson(able, person);
  }
  return able;
}
