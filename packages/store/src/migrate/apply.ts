import { createHash, randomUUID } from 'node:crypto';
import pg from 'pg';
import { type Migration, readMigrations } from './files';

/** Any fixed number: two processes that start at once must not migrate side by side. */
const MIGRATION_LOCK = 7_220_114;

/** The table `prisma migrate` keeps, so that its commands and this runner can be used on one database. */
const HISTORY_TABLE = `CREATE TABLE IF NOT EXISTS _prisma_migrations (
  id varchar(36) PRIMARY KEY, checksum varchar(64) NOT NULL, finished_at timestamptz, migration_name varchar(255) NOT NULL,
  logs text, rolled_back_at timestamptz, started_at timestamptz NOT NULL DEFAULT now(),
  applied_steps_count integer NOT NULL DEFAULT 0)`;

/**
 * Applies every migration that is missing, each in one transaction, and returns the names of those applied now.
 * `ownerUrl` is the address of the login that owns the tables; the app never gets it. Throws a sentence when a migration
 * fails (nothing of it stays) or when an applied one was edited afterwards.
 * Why not Prisma's engine: the binary is a download, and its WebAssembly form cuts scripts at every semicolon.
 */
export async function applyMigrations(ownerUrl: string, migrations?: Migration[]): Promise<string[]> {
  const wanted = migrations ?? (await readMigrations());
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    await client.query('SELECT pg_advisory_lock($1)', [MIGRATION_LOCK]);
    await client.query(HISTORY_TABLE);
    const missing = findMissing(wanted, await readHistory(client));
    for (const migration of missing) await applyOne(client, migration);
    return missing.map((migration) => migration.name);
  } finally {
    await client.end(); // releases the lock too
  }
}

async function readHistory(client: pg.Client): Promise<Map<string, string>> {
  const { rows } = await client.query<{ migration_name: string; checksum: string }>(
    'SELECT migration_name, checksum FROM _prisma_migrations WHERE finished_at IS NOT NULL AND rolled_back_at IS NULL',
  );
  return new Map(rows.map((row) => [row.migration_name, row.checksum]));
}

function findMissing(wanted: Migration[], applied: Map<string, string>): Migration[] {
  for (const migration of wanted) {
    const checksum = applied.get(migration.name);
    if (checksum !== undefined && checksum !== checksumOf(migration)) {
      throw new Error(
        `The migration ${migration.name} was changed after it had been applied here. Put it back and make a new one.`,
      );
    }
  }
  return wanted.filter((migration) => !applied.has(migration.name));
}

async function applyOne(client: pg.Client, migration: Migration): Promise<void> {
  await client.query('BEGIN');
  try {
    await client.query(migration.sql);
    await client.query(
      `INSERT INTO _prisma_migrations (id, checksum, migration_name, finished_at, applied_steps_count)
       VALUES ($1, $2, $3, now(), 1)`,
      [randomUUID(), checksumOf(migration), migration.name],
    );
    await client.query('COMMIT');
  } catch (error) {
    await client.query('ROLLBACK');
    const reason = error instanceof Error ? error.message : String(error);
    throw new Error(`The migration ${migration.name} failed and was taken back whole: ${reason}`);
  }
}

function checksumOf(migration: Migration): string {
  return createHash('sha256').update(migration.sql).digest('hex');
}
