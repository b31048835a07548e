// `npm start`, `npm run dev` and `npm run van`: everything from a bare clone to a served page. Plain Node, because nothing is installed yet.
import { spawn, spawnSync } from 'node:child_process';
import { existsSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';

const ROOT = resolve(import.meta.dirname, '../../..');
const LEAST_NODE = [20, 19];
/** --dev and --van, for the part that starts the service. */
const modes = process.argv.slice(2);
process.chdir(ROOT);

const [major = 0, minor = 0] = process.versions.node.split('.').map(Number);
if (major < LEAST_NODE[0] || (major === LEAST_NODE[0] && minor < LEAST_NODE[1])) {
  stop(
    `Halfshaft needs Node ${LEAST_NODE.join('.')} or newer; this is ${process.versions.node}. Install a newer one.`,
  );
}

if (needsInstall()) {
  say('Installing packages (once; a minute or two) …');
  run('npm', ['ci', '--no-audit', '--no-fund', '--loglevel=error']);
}
run(process.execPath, ['packages/store/launch/generate.mjs']);

// tsx must be found before its loader can be named, hence not at the top.
const serve = spawn(process.execPath, ['--import', 'tsx', 'apps/api/launch/serve.ts', ...modes], {
  stdio: 'inherit',
  cwd: ROOT,
});
// Ctrl-C reaches the child by itself when typed at a terminal; a signal sent to this process alone is handed on.
for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP'])
  process.on(signal, () => serve.kill(signal === 'SIGHUP' ? 'SIGTERM' : signal));
serve.on('exit', (code) => process.exit(code ?? 0));

/** The lock file npm leaves in node_modules is as old as the last install. */
function needsInstall() {
  const installed = join(ROOT, 'node_modules', '.package-lock.json');
  if (!existsSync(installed)) return true;
  return statSync(join(ROOT, 'package-lock.json')).mtimeMs > statSync(installed).mtimeMs;
}

function run(command, args) {
  const result = spawnSync(command, args, { stdio: ['ignore', 'inherit', 'inherit'], cwd: ROOT });
  if (result.error) stop(`${command} could not be started: ${result.error.message}`);
  if (result.status !== 0)
    stop(`The step "${[command, ...args].join(' ')}" failed. The lines above say why.`);
}

function say(sentence) {
  process.stdout.write(`${sentence}\n`);
}

function stop(sentence) {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}
