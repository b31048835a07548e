import { spawnSync } from 'node:child_process';
import { pathToFileURL } from 'node:url';
import { expect, it } from 'vitest';

const SERVER = pathToFileURL(`${import.meta.dirname}/embedded-server.ts`).href;

it.each([0, 1, 3])('a process that ends with code %i keeps it beside the built-in database', (code) => {
  const script = `
    const { startEmbedded } = await import('${SERVER}');
    if (typeof startEmbedded !== 'function') throw new Error('nothing was loaded');
    process.exitCode = ${code};`;
  const ended = spawnSync(process.execPath, ['--import', 'tsx', '--input-type=module', '--eval', script], {
    cwd: import.meta.dirname,
    encoding: 'utf8',
  });
  expect(ended.stderr).toBe('');
  expect(ended.status).toBe(code);
});
