import { spawn } from 'node:child_process';

const QUIET_TOOLS = {
  TURBO_TELEMETRY_DISABLED: '1',
  TURBO_NO_UPDATE_NOTIFIER: '1',
  NEXT_TELEMETRY_DISABLED: '1',
  CHECKPOINT_DISABLE: '1',
};

/** Runs a program to its end; its output goes straight to the screen, or into `output` when `buffered`. */
export function runCommand(command, args, { cwd, buffered = false, env = {} }) {
  return new Promise((resolve) => {
    const stdio = buffered ? ['ignore', 'pipe', 'pipe'] : ['ignore', 'inherit', 'inherit'];
    const child = spawn(command, args, { cwd, stdio, env: { ...process.env, ...QUIET_TOOLS, ...env } });
    const chunks = [];
    for (const stream of [child.stdout, child.stderr]) stream?.on('data', (chunk) => chunks.push(chunk));
    const finish = (ok, message) => resolve({ ok, message, output: Buffer.concat(chunks).toString('utf8') });
    child.on('error', (error) => finish(false, `${command} could not be started: ${error.message}`));
    child.on('close', (code, signal) =>
      finish(code === 0, code === 0 ? undefined : `${command} ended with ${signal ?? `exit code ${code}`}.`),
    );
  });
}
