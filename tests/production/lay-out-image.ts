import { copyFileSync, existsSync, linkSync, mkdirSync, readdirSync, symlinkSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import { compose, ROOT } from './compose';
import { listCopies, readStages } from './dockerfile';
import { neededPackages } from './needed-packages';

/** As .dockerignore has it: installed anew in the image, and the database server of one's own machine. */
const LEFT_OUT = new Set(['node_modules', 'embedded']);

/** Lays out, under `folder`, what the Dockerfile of the API copies into its last stage: sources and needed packages. */
export function layOutImage(folder: string): void {
  for (const { from, to } of listCopies(readStages(compose.services.migrate.build?.dockerfile ?? ''))) {
    if (to === './') copyFile(join(ROOT, from), join(folder, from));
    else if (from !== 'node_modules') copyTree(join(ROOT, from), join(folder, to), LEFT_OUT);
  }
  for (const path of neededPackages('apps/api')) layPackage(folder, path);
}

function layPackage(folder: string, path: string): void {
  const source = join(ROOT, path);
  if (!existsSync(source)) return; // a build for another kind of machine
  const target = join(folder, path);
  mkdirSync(dirname(target), { recursive: true });
  const own = workspaceOf(path);
  if (own) symlinkSync(relative(dirname(target), join(folder, own)), target);
  else copyTree(source, target, new Set(['node_modules']));
}

function workspaceOf(path: string): string | null {
  const name = /^node_modules\/@halfshaft\/(\w+)$/.exec(path)?.[1];
  if (!name) return null;
  return name === 'prisma' ? name : (['apps', 'packages'].map((at) => `${at}/${name}`).find(isHere) ?? null);
}

function isHere(path: string): boolean {
  return existsSync(join(ROOT, path));
}

function copyTree(from: string, to: string, leftOut: Set<string>): void {
  mkdirSync(to, { recursive: true });
  for (const entry of readdirSync(from, { withFileTypes: true })) {
    if (leftOut.has(entry.name)) continue;
    const [source, target] = [join(from, entry.name), join(to, entry.name)];
    if (entry.isDirectory()) copyTree(source, target, leftOut);
    else copyFile(source, target);
  }
}

/** Linked where the disk allows it: packages are large and nothing writes to them. */
function copyFile(source: string, target: string): void {
  try {
    linkSync(source, target);
  } catch {
    copyFileSync(source, target); // another disk
  }
}
