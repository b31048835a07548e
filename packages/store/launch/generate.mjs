// Generates the Prisma client from prisma/models. Prisma 7's client needs no engine binary, but its command still looks
// for the schema engine and would fetch one; pointing it at any existing file keeps it off the network.
import { spawnSync } from 'node:child_process';
import { resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../../..');
const result = spawnSync(
  process.execPath,
  [resolve(root, 'node_modules/prisma/build/index.js'), 'generate'],
  {
    cwd: root,
    encoding: 'utf8',
    env: { ...process.env, PRISMA_SCHEMA_ENGINE_BINARY: process.execPath, PRISMA_HIDE_UPDATE_MESSAGE: '1' },
  },
);
if (result.status !== 0) {
  console.error(result.stdout, result.stderr);
  console.error('The database client could not be generated from prisma/models. The lines above say why.');
}
process.exit(result.status ?? 1);
