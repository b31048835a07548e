import { runVitest } from './run-vitest.mjs';

const SCREENS = 'road/screens.test.ts';
// With its slash a filter names the folder and no file of that name.
const IN_CHROMIUM = ['browser/', 'offline/', 'road/'];
const FENCE = 'fence/';

/** Runs the tests of the whole product in four parts, the longest first, so that neither core ends long before the other. */
export function runProductTests(root) {
  return runVitest(root, [
    { name: 'tests in Chromium', folder: 'tests', options: [...IN_CHROMIUM, `--exclude=${SCREENS}`] },
    { name: 'every screen', folder: 'tests', options: [SCREENS] },
    { name: 'fence', folder: 'tests', options: [FENCE] },
    {
      name: 'other tests',
      folder: 'tests',
      options: [...IN_CHROMIUM, FENCE].map((part) => `--exclude=${part}**`),
    },
  ]);
}
