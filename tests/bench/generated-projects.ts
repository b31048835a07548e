import { parseArgs } from 'node:util';
import { lowerBounds, type Project, scheduleByRule } from '@halfshaft/bayplan';
import { chanceFrom } from '../faults/chance';
import { measureSearch, printAverages, readBudgets } from './measure-search';
import { cellsOf, randomProject } from './random-projects';

const USAGE = `Usage: npx tsx tests/bench/generated-projects.ts 30|60|120 [--schedules 1000,5000] [--each N] [--seed S] [--sample S]

Solves projects by chance, N of each cell of the PSPLIB set of so many activities, and prints how far each best schedule is
from the critical path. They are another sample than the published one, so an average only indicates. A known rule is run on
them too: how far it stays on the published files says how much harder or easier this sample is, and the average is also
printed as it would be if that ratio held. --seed is that of the search, --sample that of the projects.`;

/**
 * Average per cent from the critical path on the published files of each size: by RULE, worked out on them with ties to the
 * smaller number; of the best lengths known; and the best published for 1,000, 5,000 and 50,000 schedules (Kolisch & Hartmann
 * 2006; Pellerin, Perrier & Berthaut 2020; these from memory).
 */
const PUBLISHED = new Map([
  [30, { byRule: 16.77, best: 13.372, marks: 'none' }],
  [60, { byRule: 14.407, best: 10.371, marks: '11.56, 11.10, 10.6' }],
  [120, { byRule: 39.086, best: 29.102, marks: '34.1, 32.5, 30.1' }],
]);
const RULE = { rule: 'latestFinish', scheme: 'parallel', justify: true } as const;

function meanOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, number) => sum + number, 0) / numbers.length;
}

function byRule(project: Project): number {
  const { criticalPath } = lowerBounds(project);
  return (100 * (scheduleByRule(project, RULE).makespan - criticalPath)) / criticalPath;
}

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    schedules: { type: 'string', default: '1000,5000' },
    each: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    sample: { type: 'string', default: '1' },
  },
});
const size = Number(positionals[0]);
const published = PUBLISHED.get(size);
const budgets = readBudgets(values.schedules);
if (!published || !budgets) {
  console.error(USAGE);
  process.exit(2);
}
const chance = chanceFrom(Number(values.sample));
const projects = Array.from({ length: Number(values.each) }, () => cellsOf(size))
  .flat()
  .map((cell) => randomProject(cell, chance));
const rule = meanOf(projects.map(byRule));
const measured = projects.map((project, number) => {
  const reference = lowerBounds(project).criticalPath;
  return measureSearch({ name: `project ${number + 1}`, project, reference }, budgets, Number(values.seed));
});
console.log(
  `Published files of ${size} activities, from the critical path: best known ${published.best} %; marks ${published.marks}.`,
);
console.log(
  `Latest finish, parallel, justified: ${rule.toFixed(3)} % here, ${published.byRule} % on the published files.`,
);
budgets.forEach((budget, place) => {
  const results = measured.flatMap((each) => each[place] ?? []);
  printAverages(budget, results);
  const mean = meanOf(results.map(({ deviation }) => deviation));
  console.log(`  on the published files perhaps ${((mean * published.byRule) / rule).toFixed(2)} %`);
});
