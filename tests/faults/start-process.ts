import { spawn } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import type { DatabaseUrls } from '@halfshaft/store/embedded';
import { SECRET } from '../support/secret';

const API_FOLDER = resolve(import.meta.dirname, '../../apps/api');

export interface ApiProcess {
  url: string;
  stop(): Promise<void>;
  /** Ends it as a power cut does: it finishes nothing and takes leave of nobody. */
  kill(): Promise<void>;
}

/**
 * The API's own entry in a process of its own, on a database that others use at the same time. `pages`: the folder of the
 * built pages; left away, it has none. `port`: the same address again, for one that comes back; left away, any free one.
 */
export async function startApiProcess(
  database: Pick<DatabaseUrls, 'appUrl' | 'authUrl'>,
  pages?: string,
  port = 0,
): Promise<ApiProcess> {
  const noPages = await mkdtemp(join(tmpdir(), 'halfshaft-pages-'));
  await writeFile(join(noPages, '404.html'), '<!doctype html><title>Not here</title>');
  const child = spawn(process.execPath, ['--import', 'tsx', 'src/main.ts'], {
    cwd: API_FOLDER,
    stdio: ['ignore', 'pipe', 'inherit'],
    env: {
      ...process.env,
      DATABASE_APP_URL: database.appUrl,
      DATABASE_AUTH_URL: database.authUrl,
      DATABASE_POOL_SIZE: '6',
      SIGN_IN_SECRET: SECRET,
      PUBLIC_URL: 'http://localhost',
      HOST: '127.0.0.1',
      PORT: String(port),
      WEB_FOLDER: pages ?? noPages,
    },
  });
  const exited = new Promise<void>((done) => child.once('exit', () => done()));
  const url = await new Promise<string>((done, fail) => {
    let said = '';
    child.stdout.on('data', (chunk: Buffer) => {
      said += chunk.toString();
      const found = /listens on (\S+)/.exec(said)?.[1];
      if (found) done(found);
    });
    exited.then(() => fail(new Error(`The API process ended before it listened. It said: ${said}`)));
  });
  const end = async (signal: NodeJS.Signals) => {
    child.kill(signal);
    await exited;
    await rm(noPages, { recursive: true, force: true });
  };
  return { url, stop: () => end('SIGTERM'), kill: () => end('SIGKILL') };
}
