import { randomBytes } from 'node:crypto';
import { accessSync, constants, existsSync, mkdirSync, readFileSync, statSync, writeFileSync } from 'node:fs';
import { dirname, join, resolve } from 'node:path';
import { StartProblem } from './problem';

export const ROOT = resolve(import.meta.dirname, '../../..');

/** Where a start keeps its database, secrets and marks: git-ignored, and left alone by every later start. */
export const HOME_FOLDER = resolve(process.env.HALFSHAFT_FOLDER ?? join(ROOT, '.halfshaft'));

export interface Secrets {
  ownerPassword: string;
  appPassword: string;
  authPassword: string;
  signInSecret: string;
  demoPassword: string;
}

/** Makes the folder, or says why it cannot be used. */
export function openHomeFolder(): void {
  try {
    mkdirSync(HOME_FOLDER, { recursive: true });
    accessSync(HOME_FOLDER, constants.W_OK);
  } catch {
    throw new StartProblem(
      `The folder ${HOME_FOLDER} cannot be written to. Make it writable, or name another with HALFSHAFT_FOLDER=/some/folder.`,
    );
  }
  refuseHiddenFolder();
}

/** As root the database runs as the user postgres, who must be able to reach its data and programs. */
function refuseHiddenFolder(): void {
  if (process.getuid?.() !== 0 || process.env.DATABASE_URL) return;
  for (const start of [HOME_FOLDER, join(ROOT, 'node_modules')]) {
    for (let folder = start; folder !== dirname(folder); folder = dirname(folder)) {
      if (existsSync(folder) && !othersMayEnter(folder)) {
        throw new StartProblem(
          `You are root, and the database then runs as the user postgres, who may not enter ${folder}. ` +
            'Clone into a folder that others may enter, such as /srv/halfshaft, or start as another user.',
        );
      }
    }
  }
}

/** Random on first use, kept afterwards; readable by this user only. */
export function readSecrets(): Secrets {
  const path = join(HOME_FOLDER, 'secrets.json');
  if (existsSync(path)) return JSON.parse(readFileSync(path, 'utf8')) as Secrets;
  const secrets: Secrets = {
    ownerPassword: randomText(18),
    appPassword: randomText(18),
    authPassword: randomText(18),
    signInSecret: randomText(36),
    demoPassword: `demo-${randomText(6)}`,
  };
  writeFileSync(path, JSON.stringify(secrets, null, 2), { mode: 0o600 });
  return secrets;
}

function randomText(bytes: number): string {
  return randomBytes(bytes).toString('base64url');
}

/** What was written under this name before, or null. */
export function readMark<T>(name: string): T | null {
  const path = join(HOME_FOLDER, `${name}.json`);
  return existsSync(path) ? (JSON.parse(readFileSync(path, 'utf8')) as T) : null;
}

export function writeMark(name: string, value: unknown): void {
  writeFileSync(join(HOME_FOLDER, `${name}.json`), JSON.stringify(value, null, 2));
}

function othersMayEnter(folder: string): boolean {
  const EXECUTE_FOR_OTHERS = 0o001;
  return (statSync(folder).mode & EXECUTE_FOR_OTHERS) !== 0;
}
