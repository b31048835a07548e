import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

/** The project's workspaces as `{ folder, testScript }`, in the order of the root package.json. */
export function listWorkspaces(root) {
  return readJson(join(root, 'package.json'))
    .workspaces.flatMap((pattern) => foldersOf(root, pattern))
    .filter((folder) => existsSync(join(root, folder, 'package.json')))
    .map((folder) => ({ folder, testScript: readJson(join(root, folder, 'package.json')).scripts?.test }));
}

function foldersOf(root, pattern) {
  if (!pattern.endsWith('/*')) return [pattern];
  const parent = pattern.slice(0, -2);
  return existsSync(join(root, parent))
    ? readdirSync(join(root, parent)).map((name) => `${parent}/${name}`)
    : [];
}

const readJson = (path) => JSON.parse(readFileSync(path, 'utf8'));
