import { execFileSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { join } from 'node:path';

/** Every file of the project, tracked or new but not ignored, as paths from the root with forward slashes. */
export function listFiles(root) {
  // In a container the checkout often belongs to another user, which git refuses unless told otherwise.
  const args = ['-c', 'safe.directory=*', 'ls-files', '-z', '--cached', '--others', '--exclude-standard'];
  const output = execFileSync('git', args, { cwd: root, encoding: 'utf8', maxBuffer: 64 * 1024 * 1024 });
  const paths = new Set(output.split('\0').filter((path) => path !== ''));
  return [...paths].filter((path) => existsSync(join(root, path))).sort();
}
