import { readFileSync } from 'node:fs';
import { join } from 'node:path';

/** Refuses a Node older than the root package.json asks for. */
export function requireNode(root, running = process.versions.node) {
  const { engines } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'));
  const wanted = engines.node.replace('>=', '');
  if (isAtLeast(running, wanted)) return { ok: true };
  const message = `Halfshaft needs Node ${wanted} or newer and this is Node ${running}: install a newer Node and run npm test again.`;
  return { ok: false, message };
}

function isAtLeast(running, wanted) {
  const [major = 0, minor = 0] = running.split('.').map(Number);
  const [wantedMajor = 0, wantedMinor = 0] = wanted.split('.').map(Number);
  return major === wantedMajor ? minor >= wantedMinor : major > wantedMajor;
}
