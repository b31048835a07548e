import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { lowerBounds, type RuleOptions, scheduleByRule } from '@halfshaft/bayplan';
import { type Instance, type Measured, measureSearch, printAverages, readBudgets } from './measure-search';
import { readPsplib } from './read-psplib';

const USAGE = `Usage: npx tsx tests/bench/psplib.ts FOLDER [--schedules 1000,5000] [--limit N] [--seed S] [--bounds FILE] [--rules]

Solves every .sm file of FOLDER (PSPLIB, single mode) and prints how far each best schedule is from the optimum, or from the
best known length, in FILE (default: FOLDER/optimum/optimum.csv; columns problem, optimum; "82..87" counts as 87). Where none
is known it is measured from the critical path. Every schedule is checked. --limit solves the first N files only. The seconds
are those of the clock, from the opening of the search. --rules makes one schedule of each file by each of five rules instead,
with ties to the smaller number, and prints the sums of their lengths.`;

const RULES: readonly RuleOptions[] = [
  { rule: 'activityNumber', scheme: 'serial' },
  { rule: 'latestFinish', scheme: 'serial' },
  { rule: 'latestFinish', scheme: 'serial', justify: true },
  { rule: 'latestFinish', scheme: 'parallel' },
  { rule: 'latestFinish', scheme: 'parallel', justify: true },
];

interface Known extends Instance {
  from: 'optimum' | 'criticalPath';
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

function readInstance(folder: string, name: string, known: ReadonlyMap<string, number>): Known {
  const project = readPsplib(readFileSync(join(folder, name), 'utf8'));
  const optimum = known.get(name) ?? known.get(name.replace(/\.sm$/, ''));
  if (optimum !== undefined) return { name, project, reference: optimum, from: 'optimum' };
  return { name, project, reference: lowerBounds(project).criticalPath, from: 'criticalPath' };
}

function printRules(instances: readonly Known[]): void {
  for (const options of RULES) {
    const lengths = instances.map(({ project }) => scheduleByRule(project, options).makespan);
    const sum = lengths.reduce((total, length) => total + length, 0);
    const justified = options.justify ? ', justified' : '';
    console.log(`${options.rule}, ${options.scheme}${justified}: ${sum} in ${lengths.length} projects`);
  }
}

function printInstance({ name, reference }: Instance, results: readonly Measured[]): void {
  const cells = results.map(
    ({ makespan, schedules, proven, deviation }) =>
      `${makespan}${proven ? ' proven' : ''} (${deviation.toFixed(2)} %, ${schedules} made)`,
  );
  console.log(`${name}: ${reference}; ${cells.join('; ')}`);
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    schedules: { type: 'string', default: '1000,5000' },
    limit: { type: 'string' },
    seed: { type: 'string', default: '1' },
    bounds: { type: 'string' },
    rules: { type: 'boolean', default: false },
  },
});
const [folder] = positionals;
const budgets = readBudgets(values.schedules);
if (!folder || !budgets) {
  console.error(USAGE);
  process.exit(2);
}
const known = readKnown(values.bounds ?? join(folder, 'optimum', 'optimum.csv'));
const names = readdirSync(folder)
  .filter((name) => name.endsWith('.sm'))
  .toSorted((one, other) => one.localeCompare(other, 'en', { numeric: true }))
  .slice(0, values.limit === undefined ? undefined : Number(values.limit));
if (names.length === 0) throw new Error(`There is no .sm file in ${folder}.`);
const instances = names.map((name) => readInstance(folder, name, known));
if (values.rules) {
  printRules(instances);
  process.exit(0);
}
const measured = instances.map((instance) => {
  const results = measureSearch(instance, budgets, Number(values.seed));
  printInstance(instance, results);
  return { from: instance.from, results };
});
for (const from of ['optimum', 'criticalPath'] as const) {
  const group = measured.filter((each) => each.from === from);
  if (group.length === 0) continue;
  budgets.forEach((budget, place) => {
    const results = group.flatMap((each) => each.results[place] ?? []);
    printAverages(budget, results, from === 'optimum' ? 'the known length' : undefined);
  });
}
