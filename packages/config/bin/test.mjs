#!/usr/bin/env node
// The whole of `npm test`. It starts with plain Node and nothing installed.
import { fileURLToPath } from 'node:url';
import { listSteps } from '../src/test-run/list-steps.mjs';
import { runSteps } from '../src/test-run/run-steps.mjs';

const root = fileURLToPath(new URL('../../../', import.meta.url));
const print = (line) => process.stdout.write(`${line}\n`);

process.exitCode = await runSteps(root, listSteps(root), { print, now: () => performance.now() });
