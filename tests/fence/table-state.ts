import type pg from 'pg';

/** For each table and tenant: how many rows, and a hash of their content that does not depend on their order. */
export type TableState = Map<string, string>;

/** Every table of the schema but the history of migrations, with the column that names its tenant. */
export async function listTables(owner: pg.Client): Promise<{ table: string; tenant: string }[]> {
  const { rows } = await owner.query<{ table: string; tenant: string | null }>(`
    SELECT c.relname AS table, a.attname AS tenant FROM pg_class c
    LEFT JOIN pg_attribute a ON a.attrelid = c.oid AND a.attname IN ('team_id', 'organiser_id') AND a.attnum = 1
    WHERE c.relnamespace = 'public'::regnamespace AND c.relkind IN ('r', 'p') AND c.relname <> '_prisma_migrations'
    ORDER BY c.relname`);
  return rows.map(({ table, tenant }) => {
    if (!tenant) throw new Error(`The table ${table} does not begin with team_id or organiser_id.`);
    return { table, tenant };
  });
}

/** The whole database as it is now. `except` leaves one row of the table `action` out. */
export async function readState(owner: pg.Client, except: string | null = null): Promise<TableState> {
  const parts = (await listTables(owner)).map(({ table, tenant }) => {
    const filter =
      table === 'action' ? 'WHERE t.id IS DISTINCT FROM $1::uuid' : 'WHERE $1::uuid IS NULL OR true';
    return `SELECT '${table} of ' || t.${tenant} AS place, count(*) || ' rows ' ||
      md5(string_agg(md5(t::text), '' ORDER BY md5(t::text))) AS content FROM ${table} t ${filter} GROUP BY t.${tenant}`;
  });
  const { rows } = await owner.query<{ place: string; content: string }>(parts.join(' UNION ALL '), [except]);
  return new Map(rows.map((row) => [row.place, row.content]));
}

/** The places that differ, such as "action of 7c…"; empty when nothing changed. */
export function changedPlaces(before: TableState, after: TableState): string[] {
  const places = new Set([...before.keys(), ...after.keys()]);
  return [...places].filter((place) => before.get(place) !== after.get(place)).sort();
}

/** Forgets every tenant but these, so that the next state is read from few rows. Needs a superuser: foreign keys are off. */
export async function forgetAllBut(owner: pg.Client, tenants: string[]): Promise<void> {
  const deletes = (await listTables(owner)).map(
    ({ table, tenant }) =>
      `DELETE FROM ${table} WHERE NOT (${tenant}::text = ANY ('{${tenants.join(',')}}'))`,
  );
  await owner.query(
    `SET session_replication_role = replica; ${deletes.join('; ')}; RESET session_replication_role`,
  );
}
