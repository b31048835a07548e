import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './compose';

interface Locked {
  link?: boolean;
  resolved?: string;
  dependencies?: Record<string, string>;
  optionalDependencies?: Record<string, string>;
}

const lock = JSON.parse(readFileSync(join(ROOT, 'package-lock.json'), 'utf8')) as {
  packages: Record<string, Locked>;
};

/**
 * The installed folders, from the root of the repository, that a workspace needs when it runs: what its dependencies lead to
 * in the lock file, without anything that is for development only.
 */
export function neededPackages(workspace: string): string[] {
  const needed = new Set<string>();
  const waiting = [workspace];
  for (let path = waiting.pop(); path !== undefined; path = waiting.pop()) {
    const entry = lock.packages[path];
    const names = Object.keys({ ...entry?.dependencies, ...entry?.optionalDependencies });
    for (const found of names.map((name) => findInstalled(path ?? '', name))) {
      if (!found || needed.has(found)) continue;
      needed.add(found);
      waiting.push(lock.packages[found]?.link ? (lock.packages[found]?.resolved ?? found) : found);
    }
  }
  return [...needed];
}

/** As Node looks for a package: beside the one that asks, then further and further out. */
function findInstalled(from: string, name: string): string | null {
  for (let base = from; ; base = outwards(base)) {
    const path = base === '' ? `node_modules/${name}` : `${base}/node_modules/${name}`;
    if (lock.packages[path]) return path;
    if (base === '') return null; // an optional one of another machine
  }
}

function outwards(path: string): string {
  return path.includes('/') ? path.slice(0, path.lastIndexOf('/')) : '';
}
