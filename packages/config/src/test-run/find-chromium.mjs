import { existsSync } from 'node:fs';
import { runCommand } from './run-command.mjs';

const USUAL_PLACE = '/usr/bin/chromium';

/** Makes sure of a Chromium for the browser tests and names it in CHROMIUM_PATH; on Debian as root it installs one. */
export async function findChromium(root) {
  const named = process.env.CHROMIUM_PATH;
  const path = named ?? USUAL_PLACE;
  if (existsSync(path)) return found(path);
  if (named !== undefined)
    return { ok: false, message: `CHROMIUM_PATH names ${named}, and there is no such file.` };
  if (!canInstall()) {
    const message = `The browser tests need Chromium: install it as ${USUAL_PLACE}, or set CHROMIUM_PATH to where it is.`;
    return { ok: false, message };
  }
  const installed = await installChromium(root);
  return installed.ok ? found(USUAL_PLACE) : installed;
}

function found(path) {
  process.env.CHROMIUM_PATH = path;
  return { ok: true };
}

const canInstall = () =>
  process.getuid?.() === 0 && existsSync('/etc/debian_version') && existsSync('/usr/bin/apt-get');

async function installChromium(root) {
  const options = { cwd: root, env: { DEBIAN_FRONTEND: 'noninteractive' } };
  const updated = await runCommand('apt-get', ['update'], options);
  return updated.ok ? runCommand('apt-get', ['install', '-y', 'chromium'], options) : updated;
}
