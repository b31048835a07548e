import { runVitest } from './run-vitest.mjs';

const IN_CHROMIUM = ['browser', 'offline', 'road'];

/** Runs the tests of the whole product, those in Chromium beside all the others: each half waits much of its time. */
export function runProductTests(root) {
  return runVitest(root, [
    // With its slash a filter names the folder and no file of that name.
    { name: 'tests in Chromium', folder: 'tests', options: IN_CHROMIUM.map((folder) => `${folder}/`) },
    { name: 'other tests', folder: 'tests', options: IN_CHROMIUM.map((folder) => `--exclude=${folder}/**`) },
  ]);
}
