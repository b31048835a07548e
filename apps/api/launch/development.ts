import { type ChildProcess, spawn } from 'node:child_process';
import { join } from 'node:path';
import { findFreePort } from '@halfshaft/store/embedded';
import { ROOT } from './home-folder';

/** A Next development server behind an API that starts again whenever its sources change. Returns how to stop both. */
export async function startDevelopment(settings: NodeJS.ProcessEnv): Promise<() => Promise<void>> {
  const webPort = await findFreePort();
  const env = {
    ...settings,
    NEXT_TELEMETRY_DISABLED: '1',
    WEB_DEV_URL: `http://127.0.0.1:${webPort}`,
    LOG_LEVEL: settings.LOG_LEVEL ?? 'warn',
  };
  const next = join(ROOT, 'node_modules/next/dist/bin/next');
  const tsx = join(ROOT, 'node_modules/tsx/dist/cli.mjs');
  const children = [
    run([next, 'dev', '--port', String(webPort), '--hostname', '127.0.0.1'], join(ROOT, 'apps/web'), env),
    run([tsx, 'watch', '--clear-screen=false', 'src/main.ts'], join(ROOT, 'apps/api'), env),
  ];
  return async () => void (await Promise.all(children.map(stopChild)));
}

function run(args: string[], cwd: string, env: NodeJS.ProcessEnv): ChildProcess {
  return spawn(process.execPath, args, { cwd, env, stdio: 'inherit' });
}

function stopChild(child: ChildProcess): Promise<void> {
  if (child.exitCode !== null) return Promise.resolve();
  return new Promise((resolve) => {
    child.once('exit', () => resolve());
    child.kill('SIGTERM');
  });
}
