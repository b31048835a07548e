import { existsSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { join } from 'node:path';

const folderOf = (root) => join(root, 'node_modules', '.cache', 'halfshaft-tests');

/** Where the report of one workspace's tests is written. */
export const reportPath = (root, workspace) =>
  join(folderOf(root), `${workspace.replaceAll(/[/ ]/g, '-')}.json`);

export const clearReports = (root) => rmSync(folderOf(root), { recursive: true, force: true });

/** Sums all reports written so far: `{ passed, failed, skipped }`. */
export function countTests(root) {
  const total = { passed: 0, failed: 0, skipped: 0 };
  if (!existsSync(folderOf(root))) return total;
  for (const name of readdirSync(folderOf(root))) {
    const report = JSON.parse(readFileSync(join(folderOf(root), name), 'utf8'));
    total.passed += report.numPassedTests;
    total.failed += report.numFailedTests;
    total.skipped += report.numPendingTests + report.numTodoTests;
  }
  return total;
}
