import pg from 'pg';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { type House, openHouse } from '../support/house';
import { CATALOGUE_RULES } from './catalogue-rules';
import { listTables } from './table-state';

let house: House;
let owner: pg.Client;

beforeAll(async () => {
  house = await openHouse();
  owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
});
afterAll(async () => {
  await owner?.end();
  await house?.close();
});

describe.each(CATALOGUE_RULES)('$rule', ({ offenders, breach }) => {
  it('holds', async () => {
    expect(await find(offenders)).toEqual([]);
  });

  it('would be noticed to break', async () => {
    await owner.query('BEGIN');
    try {
      await owner.query(breach);
      expect(await find(offenders)).not.toEqual([]);
    } finally {
      await owner.query('ROLLBACK');
    }
  });
});

/** The rules above would hold in an empty database too. */
it('looks at a catalogue that has something in it', async () => {
  const roles = `SELECT rolname AS what FROM pg_roles WHERE rolname LIKE 'halfshaft_%' ORDER BY rolname`;
  const keys = `SELECT conname AS what FROM pg_constraint WHERE contype = 'f' AND connamespace = 'public'::regnamespace`;
  const functions = `SELECT proname AS what FROM pg_proc WHERE pronamespace = 'public'::regnamespace ORDER BY proname`;
  expect((await listTables(owner)).length).toBeGreaterThanOrEqual(20);
  expect((await find(keys)).length).toBeGreaterThan(25);
  expect(await find(roles)).toEqual(['halfshaft_app', 'halfshaft_auth']);
  expect(await find(functions)).toEqual([
    'current_app_user',
    'current_invite',
    'current_organiser',
    'current_team',
  ]);
});

async function find(sql: string): Promise<string[]> {
  const { rows } = await owner.query<{ what: string }>(sql);
  return rows.map((row) => row.what);
}
