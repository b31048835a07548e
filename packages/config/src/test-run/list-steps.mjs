import { join } from 'node:path';
import { findChromium } from './find-chromium.mjs';
import { installPackages } from './install-packages.mjs';
import { requireNode } from './require-node.mjs';
import { runCommand } from './run-command.mjs';
import { runProductTests } from './run-product-tests.mjs';
import { runUnitTests } from './run-unit-tests.mjs';

/** Everything `npm test` does, in order; each step returns `{ ok, message }`. */
export function listSteps(root) {
  const node = (...args) => runCommand(process.execPath, args, { cwd: root });
  const tool = (name, ...args) => runCommand(join(root, 'node_modules', '.bin', name), args, { cwd: root });
  // --force: a remembered result knows nothing of the packages that a package uses, so it could hide a failure.
  // --env-mode=loose: else the switches that keep the tools from phoning home would not reach them.
  const turbo = (task) => tool('turbo', 'run', task, '--force', '--env-mode=loose', '--concurrency=2');
  return [
    { name: 'Node version', run: () => requireNode(root) },
    { name: 'packages installed', run: () => installPackages(root) },
    { name: 'Chromium', run: () => findChromium(root) },
    { name: 'database client', run: () => node('packages/store/launch/generate.mjs') },
    { name: 'format and lint', run: () => tool('biome', 'ci', '.') },
    { name: 'who may import whom', run: () => node('packages/config/bin/check-imports.mjs') },
    { name: 'files of the features', run: () => node('packages/config/bin/check-features.mjs') },
    { name: 'words', run: () => node('packages/config/bin/check-words.mjs') },
    { name: 'types', run: () => turbo('types') },
    { name: 'unit tests', run: () => runUnitTests(root) },
    // As `npm start` builds them, which then finds them ready: made anew they would be gone under the browser's tests.
    { name: 'build', run: () => node('--import', 'tsx', 'apps/api/launch/build.ts') },
    { name: 'the whole product', run: () => runProductTests(root) },
  ];
}
