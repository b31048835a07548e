import { spawnSync } from 'node:child_process';
import { createHash } from 'node:crypto';
import { existsSync, readdirSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { ROOT, readMark, writeMark } from './home-folder';
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

/** Builds the pages when their sources changed since the last build; a second start finds them ready. */
export function buildWebIfNeeded(say: (sentence: string) => void): void {
  const fingerprint = fingerprintOf(SOURCES.map((path) => join(ROOT, path)));
  const built = readMark<{ fingerprint: string }>('web-build');
  if (built?.fingerprint === fingerprint && existsSync(join(WEB_OUT, 'index.html'))) return;
  say('Building the pages (once; half a minute) …');
  const result = spawnSync('npm', ['run', 'build', '--silent', '--workspace', '@halfshaft/web'], {
    cwd: ROOT,
    encoding: 'utf8',
    env: { ...process.env, NEXT_TELEMETRY_DISABLED: '1' },
  });
  if (result.status !== 0) {
    throw new StartProblem(`The pages could not be built.\n${result.stdout}\n${result.stderr}`);
  }
  writeMark('web-build', { fingerprint });
}

/** Names, sizes and times of all source files: cheap, and it changes whenever one of them is saved. */
function fingerprintOf(paths: string[]): string {
  const hash = createHash('sha256');
  const walk = (path: string) => {
    const { size, mtimeMs } = statSync(path);
    if (!statSync(path).isDirectory()) {
      hash.update(`${path}:${size}:${mtimeMs}\n`);
      return;
    }
    for (const name of readdirSync(path).sort()) if (!LEFT_OUT.has(name)) walk(join(path, name));
  };
  for (const path of paths) walk(path);
  return hash.digest('hex');
}
