import type { TestDatabase } from '@halfshaft/store/embedded';
import pg from 'pg';

/** Runs one statement as the owner of the tables, past every fence. */
export async function askOwner<Row extends pg.QueryResultRow>(
  database: TestDatabase,
  sql: string,
  values: unknown[] = [],
): Promise<Row[]> {
  const client = new pg.Client({ connectionString: database.ownerUrl });
  await client.connect();
  try {
    return (await client.query<Row>(sql, values)).rows;
  } finally {
    await client.end();
  }
}

/** For every table of the app, how many rows it has and a hash over all of them: equal exactly when nothing changed. */
export async function hashTables(database: TestDatabase): Promise<Record<string, string>> {
  const tables = await askOwner<{ name: string }>(
    database,
    `SELECT relname AS name FROM pg_class
     WHERE relnamespace = 'public'::regnamespace AND relkind = 'r' AND relname <> '_prisma_migrations' ORDER BY relname`,
  );
  const hashes = tables.map(
    ({ name }) =>
      `SELECT '${name}' AS name, count(*) || ' rows ' || md5(coalesce(string_agg(t::text, '|' ORDER BY t::text), '')) AS hash
       FROM "${name}" t`,
  );
  const rows = await askOwner<{ name: string; hash: string }>(database, hashes.join(' UNION ALL '));
  return Object.fromEntries(rows.map((row) => [row.name, row.hash]));
}
