import type { Activity, Project } from '@halfshaft/bayplan';

/**
 * One single-mode project in the text format of the PSPLIB collection (Kolisch & Sprecher 1996): blocks with a heading
 * each, ended by a line of stars; jobs are numbered from 1 and include a source and a sink.
 */
export function readPsplib(text: string): Project {
  const lines = text.split(/\r?\n/);
  const capacities = block(lines, 'RESOURCEAVAILABILITIES', 2)[0] ?? [];
  const resources = capacities.map((capacity, column) => ({ id: `R${column + 1}`, capacity }));
  const after = new Map<number, { activity: string }[]>();
  for (const [job, , , ...followers] of block(lines, 'PRECEDENCE RELATIONS', 2)) {
    for (const follower of followers) {
      after.set(follower, [...(after.get(follower) ?? []), { activity: `${job}` }]);
    }
  }
  const activities = block(lines, 'REQUESTS/DURATIONS', 3).map(
    ([job = 0, , duration = 0, ...amounts]): Activity => ({
      id: `${job}`,
      duration,
      needs: resources.map(({ id }, column) => ({ resource: id, amount: amounts[column] ?? 0 })),
      after: after.get(job) ?? [],
    }),
  );
  return { resources, activities };
}

/** The numbers of each line of a block, from so many lines after its heading to the line of stars. */
function block(lines: readonly string[], heading: string, skipped: number): number[][] {
  const from = lines.findIndex((line) => line.startsWith(heading));
  if (from < 0) throw new Error(`readPsplib: there is no block ${heading}.`);
  const rest = lines.slice(from + skipped);
  const end = rest.findIndex((line) => line.startsWith('*'));
  return rest.slice(0, end < 0 ? rest.length : end).map((line) => line.trim().split(/\s+/).map(Number));
}
