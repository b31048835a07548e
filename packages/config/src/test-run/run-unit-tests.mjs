import { listFiles } from '../list-files.mjs';
import { listWorkspaces } from './list-workspaces.mjs';
import { runVitest } from './run-vitest.mjs';

// Has a step of its own, the last.
const WHOLE_PRODUCT = 'tests';
// These tests keep nothing in their modules, and loading the modules anew for each file took most of their time.
const SHARED_MODULES = ['--no-isolate'];

/** Runs the tests of every app and package, and refuses tests that no script would ever run. */
export function runUnitTests(root) {
  const workspaces = listWorkspaces(root);
  const forgotten = testsNobodyRuns(listFiles(root), workspaces);
  if (forgotten.length > 0) {
    const message = `Nobody runs ${forgotten.join(', ')}: give the workspace the script "test": "vitest run".`;
    return { ok: false, message };
  }
  const tested = workspaces.filter(({ testScript }) => testScript !== undefined).map(({ folder }) => folder);
  const folders = tested.filter((folder) => folder !== WHOLE_PRODUCT);
  return runVitest(
    root,
    folders.map((folder) => ({ folder, options: SHARED_MODULES })),
  );
}

export function testsNobodyRuns(paths, workspaces) {
  const run = workspaces.filter(({ testScript }) => testScript?.startsWith('vitest run'));
  return paths.filter(
    (path) => /\.test\.[a-z]+$/.test(path) && !run.some(({ folder }) => path.startsWith(`${folder}/`)),
  );
}
