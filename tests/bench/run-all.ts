import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { join } from 'node:path';

/** Runs every `*.bench.ts` of this folder, each in a process of its own, and ends with an error when one of them does. */
const files = readdirSync(import.meta.dirname).filter((name) => name.endsWith('.bench.ts'));
const failed = files.filter((name) => {
  console.log(`\n${name}`);
  const arguments_ = ['--import', 'tsx', join(import.meta.dirname, name)];
  return spawnSync(process.execPath, arguments_, { stdio: 'inherit' }).status !== 0;
});
if (failed.length > 0) console.error(`Did not run to the end: ${failed.join(', ')}`);
process.exitCode = failed.length > 0 ? 1 : 0;
