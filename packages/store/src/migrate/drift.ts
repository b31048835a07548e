import { randomBytes } from 'node:crypto';
import pg from 'pg';
import { readModels } from './files';
import { openSchemaEngine } from './schema-engine';

/**
 * How the migrated database at `ownerUrl` differs from what `prisma/models` means, one line for each column, key or index
 * that only one of them has; empty when they agree. The models are turned into tables in a scratch database of the same
 * server (the owner must be allowed to make one) and the two catalogues are compared. Checks, policies, grants and indexes
 * on some rows only are not part of the models and not compared.
 */
export async function findDrift(ownerUrl: string): Promise<string[]> {
  const name = `halfshaft_models_${randomBytes(4).toString('hex')}`;
  const scratchUrl = new URL(ownerUrl);
  scratchUrl.pathname = `/${name}`;
  await runSql(ownerUrl, `CREATE DATABASE ${name}`);
  try {
    await runSql(scratchUrl.href, await modelsAsSql(ownerUrl));
    const [migrated, modelled] = [await describe(ownerUrl), await describe(scratchUrl.href)];
    return [
      ...migrated.filter((line) => !modelled.includes(line)).map((line) => `only in the migrations: ${line}`),
      ...modelled.filter((line) => !migrated.includes(line)).map((line) => `only in the models: ${line}`),
    ];
  } finally {
    await runSql(ownerUrl, `DROP DATABASE ${name} WITH (FORCE)`);
  }
}

async function modelsAsSql(ownerUrl: string): Promise<string> {
  const files = await readModels();
  const engine = await openSchemaEngine(ownerUrl, { files });
  try {
    const { stdout } = await engine.diff({
      from: { tag: 'empty' },
      to: { tag: 'schemaDatamodel', files },
      script: true,
      exitCode: null,
      filters: { externalTables: [], externalEnums: [] },
    });
    return stdout ?? '';
  } finally {
    engine.free();
  }
}

/** One line for each column, key and index of the app's tables. */
const CATALOGUE = `
  SELECT format('column %s.%s %s%s default %s', c.relname, a.attname, format_type(a.atttypid, a.atttypmod),
                CASE WHEN a.attnotnull THEN ' not null' ELSE '' END, coalesce(pg_get_expr(d.adbin, d.adrelid), 'none')) AS line
  FROM pg_attribute a JOIN pg_class c ON c.oid = a.attrelid
  LEFT JOIN pg_attrdef d ON d.adrelid = a.attrelid AND d.adnum = a.attnum
  WHERE c.relnamespace = 'public'::regnamespace AND c.relkind = 'r' AND a.attnum > 0 AND NOT a.attisdropped
    AND c.relname <> '_prisma_migrations'
  UNION ALL
  SELECT format('key %s %s %s', k.conrelid::regclass, k.conname, pg_get_constraintdef(k.oid))
  FROM pg_constraint k WHERE k.connamespace = 'public'::regnamespace AND k.contype IN ('p', 'u', 'f')
    AND k.conrelid IS DISTINCT FROM to_regclass('_prisma_migrations')
  UNION ALL
  SELECT format('index %s', i.indexdef) FROM pg_indexes i
  WHERE i.schemaname = 'public' AND i.tablename <> '_prisma_migrations' AND i.indexdef NOT LIKE '% WHERE %'`;

async function describe(url: string): Promise<string[]> {
  const rows = await runSql(url, CATALOGUE);
  return rows.map((row) => String(row.line)).sort();
}

async function runSql(url: string, sql: string): Promise<Record<string, unknown>[]> {
  const client = new pg.Client({ connectionString: url });
  await client.connect();
  try {
    return (await client.query(sql)).rows ?? [];
  } finally {
    await client.end();
  }
}
