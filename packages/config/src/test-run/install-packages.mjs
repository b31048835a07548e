import { statSync } from 'node:fs';
import { join } from 'node:path';
import { runCommand } from './run-command.mjs';

/** Installs the locked packages when there are none yet or the lock has changed since. */
export function installPackages(root) {
  return needsInstall(root) ? runCommand('npm', ['ci'], { cwd: root }) : { ok: true };
}

export function needsInstall(root) {
  const locked = changedAt(join(root, 'package-lock.json'));
  const installed = changedAt(join(root, 'node_modules', '.package-lock.json'));
  // npm writes both files within moments of each other, in either order.
  return installed === undefined || (locked ?? 0) > installed + 5_000;
}

const changedAt = (path) => statSync(path, { throwIfNoEntry: false })?.mtimeMs;
