import { readdir, readFile } from 'node:fs/promises';
import { join, resolve } from 'node:path';

const PRISMA_FOLDER = resolve(import.meta.dirname, '../../../../prisma');

export interface Migration {
  name: string;
  sql: string;
}

/** The migrations in the order they are applied in. */
export async function readMigrations(folder = join(PRISMA_FOLDER, 'migrations')): Promise<Migration[]> {
  const entries = await readdir(folder, { withFileTypes: true });
  const names = entries.filter((entry) => entry.isDirectory()).map((entry) => entry.name);
  return Promise.all(
    names
      .sort()
      .map(async (name) => ({ name, sql: await readFile(join(folder, name, 'migration.sql'), 'utf8') })),
  );
}

/** The Prisma view of the tables, one file a noun. */
export async function readModels(folder = join(PRISMA_FOLDER, 'models')) {
  const names = (await readdir(folder)).filter((name) => name.endsWith('.prisma')).sort();
  return Promise.all(
    names.map(async (name) => ({
      path: join(folder, name),
      content: await readFile(join(folder, name), 'utf8'),
    })),
  );
}
