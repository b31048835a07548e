import { existsSync, mkdirSync, utimesSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { temporaryProject } from '../temporary-project.fixture.mjs';
import { needsInstall } from './install-packages.mjs';
import { listWorkspaces } from './list-workspaces.mjs';
import { requireNode } from './require-node.mjs';
import { runCommand } from './run-command.mjs';
import { runSteps } from './run-steps.mjs';
import { testsNobodyRuns } from './run-unit-tests.mjs';
import { tellFailure } from './tell-failure.mjs';
import { countTests, reportPath } from './test-reports.mjs';

const ok = (name) => ({ name, run: () => ({ ok: true }) });

function writeReport(root, workspace, counts) {
  const path = reportPath(root, workspace);
  mkdirSync(dirname(path), { recursive: true });
  const none = { numPassedTests: 0, numFailedTests: 0, numPendingTests: 0, numTodoTests: 0 };
  writeFileSync(path, JSON.stringify({ ...none, ...counts }));
}

async function run(root, steps) {
  const lines = [];
  const code = await runSteps(root, steps, { print: (line) => lines.push(line), now: () => 0 });
  return { code, lines, last: lines[lines.length - 1] };
}

describe('runSteps', () => {
  it('sums the reports of all steps and ends with the count', async () => {
    const root = temporaryProject({});
    const report = (workspace, numPassedTests) => ({
      name: workspace,
      run: () => {
        writeReport(root, workspace, { numPassedTests });
        return { ok: true };
      },
    });
    const { code, last } = await run(root, [report('packages/a', 3), report('apps/b', 4)]);
    expect([code, last]).toEqual([0, '7 passed, 0 failed']);
  });

  it('stops at the first failing step, says why and is never green', async () => {
    const root = temporaryProject({});
    const failing = { name: 'lint', run: () => ({ ok: false, message: 'Two spaces, please.' }) };
    const { code, lines, last } = await run(root, [ok('one'), failing, ok('three')]);
    expect([code, last]).toEqual([1, '0 passed, 1 failed']);
    expect(lines).toContain('Two spaces, please.');
    expect(lines.join('\n')).not.toContain('three');
  });

  it('takes a step that throws as failed', async () => {
    const broken = {
      name: 'types',
      run: () => {
        throw new Error('no compiler');
      },
    };
    const { code, lines } = await run(temporaryProject({}), [broken]);
    expect(code).toBe(1);
    expect(lines.join('\n')).toContain('types broke off: Error: no compiler');
  });

  it('forgets the reports of the run before', async () => {
    const root = temporaryProject({});
    writeReport(root, 'packages/old', { numPassedTests: 9 });
    expect((await run(root, [ok('one')])).last).toBe('0 passed, 0 failed');
    expect(existsSync(reportPath(root, 'packages/old'))).toBe(false);
  });
});

describe('the parts of the test run', () => {
  it('counts skipped and planned tests as skipped', () => {
    const root = temporaryProject({});
    writeReport(root, 'tests', { numPassedTests: 1, numFailedTests: 2, numPendingTests: 3, numTodoTests: 4 });
    expect(countTests(root)).toEqual({ passed: 1, failed: 2, skipped: 7 });
  });

  it('tells of a failed run what failed and no more', () => {
    const error = '\u001b[31m⎯⎯\u001b[39m Unhandled Errors ⎯⎯\nError: connection lost';
    expect(tellFailure(`✓ one\n✓ two\n${error}\n`)).toBe(error);
    const long = Array.from({ length: 500 }, (_, index) => `line ${index}`);
    expect(tellFailure(['⎯⎯ Failed Tests 1 ⎯⎯', ...long].join('\n')).split('\n')).toHaveLength(120);
    expect(tellFailure(long.join('\n')).split('\n').at(-1)).toBe('line 499');
  });

  it('refuses a Node that is too old, in a sentence', () => {
    const root = temporaryProject({ 'package.json': '{ "engines": { "node": ">=20.19" } }' });
    for (const version of ['20.19.0', '20.20.2', '22.0.0']) expect(requireNode(root, version).ok).toBe(true);
    for (const version of ['18.20.0', '20.18.9']) {
      expect(requireNode(root, version).message).toContain(`20.19 or newer and this is Node ${version}`);
    }
  });

  it('installs when nothing is installed or the lock has changed since', () => {
    const root = temporaryProject({ 'package-lock.json': '{}' });
    expect(needsInstall(root)).toBe(true);
    mkdirSync(join(root, 'node_modules'));
    writeFileSync(join(root, 'node_modules', '.package-lock.json'), '{}');
    expect(needsInstall(root)).toBe(false);
    utimesSync(join(root, 'node_modules', '.package-lock.json'), 1000, 1000);
    expect(needsInstall(root)).toBe(true);
  });

  it('finds the workspaces and their test scripts', () => {
    const root = temporaryProject({
      'package.json': '{ "workspaces": ["apps/*", "packages/*", "tests"] }',
      'packages/a/package.json': '{ "scripts": { "test": "vitest run" } }',
      'packages/empty/README.md': '',
      'tests/package.json': '{}',
    });
    expect(listWorkspaces(root)).toEqual([
      { folder: 'packages/a', testScript: 'vitest run' },
      { folder: 'tests', testScript: undefined },
    ]);
  });

  it('finds tests that no script runs', () => {
    const workspaces = [
      { folder: 'packages/a', testScript: 'vitest run' },
      { folder: 'prisma', testScript: undefined },
    ];
    const paths = ['packages/a/src/x.test.ts', 'prisma/x.test.ts', 'packages/ab/x.test.mjs', 'prisma/x.ts'];
    expect(testsNobodyRuns(paths, workspaces)).toEqual(['prisma/x.test.ts', 'packages/ab/x.test.mjs']);
  });

  it('reports how a program ended, also when there is none', async () => {
    const options = { cwd: process.cwd(), buffered: true };
    const fine = await runCommand(process.execPath, ['-e', 'console.log("said")'], options);
    expect(fine).toMatchObject({ ok: true, output: 'said\n' });
    const failed = await runCommand(process.execPath, ['-e', 'process.exit(3)'], options);
    expect(failed).toMatchObject({ ok: false, message: expect.stringContaining('exit code 3') });
    const missing = await runCommand('halfshaft-no-such-program', [], options);
    expect(missing).toMatchObject({ ok: false, message: expect.stringContaining('could not be started') });
  });
});
