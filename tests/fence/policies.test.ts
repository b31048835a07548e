import pg from 'pg';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { type House, openHouse } from '../support/house';
import { findHoles, type ProbedTable, readProbedTables } from './find-holes';
import { TABLE_PROBES } from './probe-rows';
import { type Seed, seedWorld } from './seed';

interface Policy {
  table: string;
  name: string;
  checks: boolean;
}

let house: House;
let owner: pg.Client;
let seeds: { mine: Seed; others: Seed };
let tables: ProbedTable[];
let policies: Policy[];

beforeAll(async () => {
  house = await openHouse();
  owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
  seeds = { mine: await seedWorld(house, owner), others: await seedWorld(house, owner) };
  tables = await readProbedTables(owner, seeds.mine, seeds.others);
  const { rows } = await owner.query<Policy>(
    `SELECT tablename AS table, policyname AS name, with_check IS NOT NULL AS checks
     FROM pg_policies WHERE schemaname = 'public' ORDER BY tablename, policyname`,
  );
  policies = rows;
});
afterAll(async () => {
  await owner?.end();
  await house?.close();
});

it('probes every table and no table that is gone', () => {
  expect(Object.keys(TABLE_PROBES).sort()).toEqual(tables.map(({ table }) => table).sort());
  expect(policies.length).toBeGreaterThanOrEqual(tables.length);
});

it('finds every table fenced as it should be', async () => {
  const holes = [];
  for (const { table } of tables) holes.push(...(await holesAfter(null, table)));
  expect(holes).toEqual([]);
});

/** A policy whose loss no probe notices is told by its name. */
it.each([
  ['is dropped', ({ name, table }: Policy) => `DROP POLICY ${name} ON ${table}`],
  ['lets every row be seen', ({ name, table }: Policy) => `ALTER POLICY ${name} ON ${table} USING (true)`],
  [
    'lets every row be written',
    ({ name, table, checks }: Policy) =>
      checks ? `ALTER POLICY ${name} ON ${table} WITH CHECK (true)` : null,
  ],
  [
    'lets everything through',
    ({ name, table, checks }: Policy) =>
      checks ? `ALTER POLICY ${name} ON ${table} USING (true) WITH CHECK (true)` : null,
  ],
])('notices when any policy %s', async (_what, tamper) => {
  const unnoticed = [];
  let tried = 0;
  for (const policy of policies) {
    const sql = tamper(policy);
    if (!sql) continue;
    tried += 1;
    if ((await holesAfter(sql, policy.table)).length === 0)
      unnoticed.push(`${policy.name} on ${policy.table}`);
  }
  expect(unnoticed).toEqual([]);
  expect(tried).toBeGreaterThanOrEqual(tables.length);
});

it('notices when any table has row-level security switched off', async () => {
  const unnoticed = [];
  for (const { table } of tables) {
    const holes = await holesAfter(`ALTER TABLE ${table} DISABLE ROW LEVEL SECURITY`, table);
    if (holes.length === 0) unnoticed.push(table);
  }
  expect(unnoticed).toEqual([]);
});

/** Tampers as the owner, looks as the app, and takes everything back. */
async function holesAfter(tampering: string | null, table: string): Promise<string[]> {
  const probed = tables.find((each) => each.table === table);
  if (!probed) throw new Error(`The table ${table} has policies but no probe.`);
  await owner.query('BEGIN');
  try {
    if (tampering) await owner.query(tampering);
    await owner.query('SET LOCAL ROLE halfshaft_app');
    return await findHoles(owner, probed, seeds);
  } finally {
    await owner.query('ROLLBACK');
  }
}
