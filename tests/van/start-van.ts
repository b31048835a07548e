import { type ChildProcess, spawn } from 'node:child_process';
import { resolve } from 'node:path';

export const ROOT = resolve(import.meta.dirname, '../..');

export interface RunningVan {
  /** All that the terminal has said so far. */
  output(): string;
  /** Ctrl-C; resolves with the exit code. */
  stop(): Promise<number | null>;
}

/** `npm run van` as a person starts it, in a folder of its own. Resolves when it says that it is ready. */
export async function startVan(folder: string, settings: Record<string, string>): Promise<RunningVan> {
  const child = spawn(process.execPath, ['apps/api/launch/start.mjs', '--van'], {
    cwd: ROOT,
    env: { ...process.env, HALFSHAFT_FOLDER: folder, DATABASE_URL: '', ...settings },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const ended = new Promise<number | null>((done) => child.once('close', done));
  let text = '';
  await new Promise<void>((done, fail) => {
    const read = (chunk: Buffer) => {
      text += chunk.toString('utf8');
      if (text.includes('Stop with Ctrl-C')) done();
    };
    child.stdout.on('data', read);
    child.stderr.on('data', read);
    ended.then(() => fail(new Error(`It ended before it was ready:\n${text}`)));
  });
  return { output: () => text, stop: () => stop(child, ended) };
}

function stop(child: ChildProcess, ended: Promise<number | null>): Promise<number | null> {
  child.kill('SIGINT');
  return ended;
}
