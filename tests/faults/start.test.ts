import { type ChildProcess, execFileSync, spawn } from 'node:child_process';
import { chmodSync, existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { findFreePort } from '@halfshaft/store/embedded';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';

const ROOT = resolve(import.meta.dirname, '../..');
const WAIT_MS = 180_000;

interface Start {
  process: ChildProcess;
  output(): string;
  /** Resolves when the address and the sign-ins were printed. */
  ready: Promise<void>;
  /** Resolves with the exit code. */
  ended: Promise<number | null>;
}

function start(folder: string, port: number): Start {
  const child = spawn(process.execPath, ['apps/api/launch/start.mjs'], {
    cwd: ROOT,
    env: { ...process.env, HALFSHAFT_FOLDER: folder, PORT: String(port), DATABASE_URL: '' },
    stdio: ['ignore', 'pipe', 'pipe'],
    detached: true,
  });
  let text = '';
  const ended = new Promise<number | null>((done) => child.once('close', done));
  const ready = new Promise<void>((done, fail) => {
    const read = (chunk: Buffer) => {
      text += chunk.toString('utf8');
      // The last line of all, and not the first: on a busy machine the sign-ins come a moment after the address.
      if (text.includes('Stop with Ctrl-C')) done();
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    ended.then(() => fail(new Error(`It ended before it was ready:\n${text}`)));
  });
  ready.catch(() => {});
  return { process: child, output: () => text, ready, ended };
}

/** As a terminal does it: Ctrl-C goes to the whole group, and the parent hands it on as well. */
async function stop(running: Start): Promise<number | null> {
  process.kill(-(running.process.pid ?? 0), 'SIGINT');
  return running.ended;
}

/** Processes whose command line names this folder: the database is started with it. */
function processesOf(folder: string): string {
  try {
    return execFileSync('pgrep', ['-f', folder], { encoding: 'utf8' });
  } catch {
    return ''; // pgrep ends with 1 when there is none
  }
}

async function signIn(port: number, output: string): Promise<unknown> {
  const password = /demo-\S+/.exec(output)?.[0];
  const origin = `http://127.0.0.1:${port}`;
  const response = await fetch(`${origin}/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin },
    body: JSON.stringify({ email: 'mara@birchlane.example', password }),
  });
  return response.json();
}

describe('npm start', () => {
  const folder = mkdtempSync(join(tmpdir(), 'halfshaft-start-'));
  chmodSync(folder, 0o755); // as root, the database runs as another user
  let port = 0;
  let firstOutput = '';

  beforeAll(async () => {
    port = await findFreePort();
  });
  afterAll(() => rmSync(folder, { recursive: true, force: true }));

  it(
    'serves the pages, prints an address and sign-ins that work, and Ctrl-C leaves no process',
    async () => {
      const running = start(folder, port);
      await running.ready;
      firstOutput = running.output();
      expect(firstOutput).toContain(`http://localhost:${port}`);
      const page = await fetch(`http://127.0.0.1:${port}/`);
      expect(page.status).toBe(200);
      expect(await page.text()).toContain('Halfshaft');
      expect(await signIn(port, firstOutput)).toMatchObject({ user: { name: 'Mara Quill' } });

      const second = start(folder, await findFreePort());
      expect(await second.ended).toBe(1);
      expect(second.output()).toContain(`already runs from this folder: http://localhost:${port}`);

      expect(processesOf(folder)).not.toBe('');
      expect(await stop(running)).toBe(0);
      expect(processesOf(folder)).toBe('');
      expect(existsSync(join(folder, 'running.json'))).toBe(false);
    },
    WAIT_MS,
  );

  it(
    'starts again with its data, without building or loading, also after a hard kill',
    async () => {
      const running = start(folder, port);
      await running.ready;
      expect(running.output()).not.toMatch(/Building|Loading|Installing/);
      expect(await signIn(port, firstOutput)).toMatchObject({ user: { name: 'Mara Quill' } });
      // The process that owns the database dies without a chance to stop it.
      execFileSync('pkill', ['-KILL', '-P', String(running.process.pid)]);
      await running.ended;
      expect(processesOf(folder)).not.toBe('');

      const again = start(folder, port);
      await again.ready;
      expect(await signIn(port, firstOutput)).toMatchObject({ user: { name: 'Mara Quill' } });
      expect(await stop(again)).toBe(0);
      expect(processesOf(folder)).toBe('');
    },
    WAIT_MS,
  );

  it('says in a sentence that the port is taken, and what to do', async () => {
    const other = createServer().listen(port, '127.0.0.1');
    const running = start(folder, port);
    expect(await running.ended).toBe(1);
    expect(running.output()).toContain(
      `Port ${port} is taken by another program. Stop it, or choose another: PORT=`,
    );
    other.close();
  });

  it('says in a sentence that its folder cannot be written to', async () => {
    // A file where the folder should be: root may write anywhere else.
    const file = join(folder, 'a-file');
    writeFileSync(file, '');
    const running = start(join(file, 'inside'), port);
    expect(await running.ended).toBe(1);
    expect(running.output()).toContain('cannot be written to. Make it writable');
  });

  it('says in a sentence that PORT is not a port', async () => {
    const running = start(folder, 123_456);
    expect(await running.ended).toBe(1);
    expect(running.output()).toContain('PORT=123456 is not a port');
  });
});
