import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT } from './home-folder';
import { StartProblem } from './problem';

const SOURCES = [
  'apps/web',
  'packages/contract',
  'packages/itinerary',
  'packages/lifing',
  'packages/worklog',
  'package-lock.json',
];
const LEFT_OUT = new Set(['node_modules', '.next', 'out', '.turbo', 'next-env.d.ts']);

export const WEB_OUT = join(ROOT, 'apps/web/out');
/** Lies in the build itself, which replaces its folder: a build made otherwise has no mark and is made again. */
const MARK = join(WEB_OUT, 'built-from.txt');

/** Builds the pages when their sources changed since the last build; a second start finds them ready. */
export function buildWebIfNeeded(say: (sentence: string) => void): void {
  const fingerprint = fingerprintOf(SOURCES.map((path) => join(ROOT, path)));
  if (existsSync(MARK) && readFileSync(MARK, 'utf8') === fingerprint) return;
  say('Building the pages (once; half a minute) …');
  const result = spawnSync('npm', ['run', 'build', '--silent', '--workspace', '@halfshaft/web'], {
    cwd: ROOT,
    encoding: 'utf8',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  });
  if (result.status !== 0) {
    throw new StartProblem(`The pages could not be built.\n${result.stdout}\n${result.stderr}`);
  }
  writeFileSync(MARK, fingerprint);
}

/** Names, sizes and times of all source files: cheap, and it changes whenever one of them is saved. */
function fingerprintOf(paths: string[]): string {
  const hash = createHash('sha256');
  const walk = (path: string) => {
    const entry = statSync(path);
    if (!entry.isDirectory()) {
      hash.update(`${path}:${entry.size}:${entry.mtimeMs}\n`);
      return;
    }
    for (const name of readdirSync(path).sort()) if (!LEFT_OUT.has(name)) walk(join(path, name));
  };
  for (const path of paths) walk(path);
  return hash.digest('hex');
}
