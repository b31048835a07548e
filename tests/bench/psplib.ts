import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { checkSchedule, lowerBounds, openSearch, type Project } from '@halfshaft/bayplan';
import { readPsplib } from './read-psplib';

const USAGE = `Usage: npx tsx tests/bench/psplib.ts FOLDER [--schedules 1000,5000] [--limit N] [--seed S] [--bounds FILE]

Solves every .sm file of FOLDER (PSPLIB, single mode) and prints how far each best schedule is from the optimum, or from the
best known length, in FILE (default: FOLDER/optimum/optimum.csv; columns problem, optimum; "82..87" counts as 87). Where none
is known it is measured from the critical path. Every schedule is checked. --limit solves the first N files only. The seconds
are those of the clock, from the opening of the search.`;

/** Seconds within which a service-size project should be proven. */
const SOON = 10;

interface Instance {
  name: string;
  project: Project;
  reference: number;
  from: 'optimum' | 'criticalPath';
}

interface Measured {
  makespan: number;
  schedules: number;
  proven: boolean;
  deviation: number;
  seconds: number;
}

function readKnown(file: string): Map<string, number> {
  if (!existsSync(file)) return new Map();
  const rows = readFileSync(file, 'utf8').trim().split(/\r?\n/).slice(1);
  return new Map(
    rows.map((row) => {
      const [name = '', length = ''] = row.split(',');
      return [name.trim(), Number(length.split('..').at(-1))];
    }),
  );
}

function readInstance(folder: string, name: string, known: ReadonlyMap<string, number>): Instance {
  const project = readPsplib(readFileSync(join(folder, name), 'utf8'));
  const optimum = known.get(name) ?? known.get(name.replace(/\.sm$/, ''));
  if (optimum !== undefined) return { name, project, reference: optimum, from: 'optimum' };
  return { name, project, reference: lowerBounds(project).criticalPath, from: 'criticalPath' };
}

/** One search, paused at each budget. */
function measure(
  { name, project, reference }: Instance,
  budgets: readonly number[],
  seed: number,
): Measured[] {
  const search = openSearch(project, { seed });
  const since = performance.now();
  let made = 0;
  return budgets.map((budget) => {
    const { best, proven, schedules } = search.step(budget - made);
    made = budget;
    const faults = checkSchedule(project, best);
    if (faults[0]) throw new Error(`${name}: ${faults[0].sentence}`);
    if (schedules > budget) throw new Error(`${name}: ${schedules} schedules were made, ${budget} allowed.`);
    const seconds = (performance.now() - since) / 1000;
    const deviation = (100 * (best.makespan - reference)) / reference;
    return { makespan: best.makespan, schedules, proven, deviation, seconds };
  });
}

function printInstance({ name, reference }: Instance, results: readonly Measured[]): void {
  const cells = results.map(
    ({ makespan, schedules, proven, deviation }) =>
      `${makespan}${proven ? ' proven' : ''} (${deviation.toFixed(2)} %, ${schedules} made)`,
  );
  console.log(`${name}: ${reference}; ${cells.join('; ')}`);
}

function printAverages(budget: number, results: readonly Measured[], from: string): void {
  const total = (measureOf: (result: Measured) => number) =>
    results.reduce((sum, result) => sum + measureOf(result), 0);
  const count = results.length;
  const at = total(({ deviation }) => (deviation === 0 ? 1 : 0));
  const below = total(({ deviation }) => (deviation < 0 ? 1 : 0));
  const proven = total((result) => (result.proven ? 1 : 0));
  const soon = total((result) => (result.proven && result.seconds <= SOON ? 1 : 0));
  console.log(
    `${budget} schedules, ${count} projects: ${(total(({ deviation }) => deviation) / count).toFixed(3)} % from ${from}; ` +
      `sum ${total(({ makespan }) => makespan)}; at it ${at}, below it ${below}; ` +
      `proven ${((100 * proven) / count).toFixed(1)} %, within ${SOON} s each ${((100 * soon) / count).toFixed(1)} %; ${total(({ seconds }) => seconds).toFixed(1)} s`,
  );
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    schedules: { type: 'string', default: '1000,5000' },
    limit: { type: 'string' },
    seed: { type: 'string', default: '1' },
    bounds: { type: 'string' },
  },
});
const [folder] = positionals;
const budgets = values.schedules.split(',').map(Number);
const rising = budgets.every((budget, place) => budget > (budgets[place - 1] ?? 0));
if (!folder || !rising || budgets.some((budget) => !Number.isSafeInteger(budget))) {
  console.error(USAGE);
  process.exit(2);
}
const known = readKnown(values.bounds ?? join(folder, 'optimum', 'optimum.csv'));
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.sm'))
  .toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))
  .slice(0, values.limit === undefined ? undefined : Number(values.limit));
if (names.length === 0) throw new Error(`There is no .sm file in ${folder}.`);
const measured = names.map((name) => {
  const instance = readInstance(folder, name, known);
  const results = measure(instance, budgets, Number(values.seed));
  printInstance(instance, results);
  return { from: instance.from, results };
});
for (const from of ['optimum', 'criticalPath'] as const) {
  const group = measured.filter((each) => each.from === from);
  if (group.length === 0) continue;
  budgets.forEach((budget, place) => {
    const results = group.flatMap((each) => each.results[place] ?? []);
    printAverages(budget, results, from === 'optimum' ? 'the known length' : 'the critical path');
  });
}
