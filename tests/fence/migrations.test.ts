import { cloneDatabase, type TestDatabase } from '@halfshaft/store/embedded';
import { applyMigrations, findDrift } from '@halfshaft/store/migrate';
import pg from 'pg';
import { afterEach, beforeEach, describe, expect, inject, it } from 'vitest';

let database: TestDatabase;
let owner: pg.Client;

beforeEach(async () => {
  database = await cloneDatabase(inject('adminUrl'));
  owner = new pg.Client({ connectionString: database.ownerUrl });
  await owner.connect();
});
afterEach(async () => {
  await owner.end();
  await database.drop();
});

describe('the models and the migrations', () => {
  it('mean the same tables', async () => {
    expect(await findDrift(database.ownerUrl)).toEqual([]);
  });

  it.each([
    ['a column', 'ALTER TABLE car ADD COLUMN colour text', ['column car.colour']],
    [
      'a default',
      `ALTER TABLE car ALTER COLUMN name SET DEFAULT 'x'`,
      ['column car.name', 'column car.name'],
    ],
    [
      'a lost key',
      'ALTER TABLE log_entry DROP CONSTRAINT log_entry_team_id_by_person_fkey',
      ['key log_entry'],
    ],
    ['an index', 'CREATE INDEX car_name_idx ON car (team_id, name)', ['index CREATE INDEX car_name_idx']],
  ])('differ when one of them has %s more', async (_what, change, found) => {
    await owner.query(change);
    const drift = await findDrift(database.ownerUrl);
    expect(drift).toHaveLength(found.length);
    for (const [index, part] of found.entries()) expect(drift[index]).toContain(part);
  });
});

describe('applying migrations', () => {
  it('applies nothing the second time', async () => {
    const before = await readCatalogue();
    expect(await applyMigrations(database.ownerUrl)).toEqual([]);
    expect(await readCatalogue()).toEqual(before);
  });

  it('applies what is missing, once, also when two start together', async () => {
    const migrations = [{ name: '20990101000000_more', sql: 'CREATE TABLE more (id integer)' }];
    const start = () => applyMigrations(database.ownerUrl, migrations);
    const applied = await Promise.all([start(), start()]);
    expect(applied.flat()).toEqual(['20990101000000_more']);
    expect(await start()).toEqual([]);
  });

  it('refuses a migration that was edited after it had been applied, and applies none of the others', async () => {
    const { rows } = await owner.query<{ name: string }>(
      'SELECT migration_name AS name FROM _prisma_migrations ORDER BY migration_name',
    );
    const before = await readCatalogue();
    const edited = { name: rows[0]?.name ?? '', sql: 'SELECT 1' };
    const more = { name: '00000000000000_more', sql: 'CREATE TABLE more (id integer)' };
    await expect(applyMigrations(database.ownerUrl, [more, edited])).rejects.toThrow(
      `The migration ${edited.name} was changed after it had been applied here. Put it back and make a new one.`,
    );
    expect(await readCatalogue()).toEqual(before);
  });

  it('leaves nothing of a migration that fails, and applies it once it is mended', async () => {
    const before = await readCatalogue();
    const name = '20990101000000_fails';
    const sql = 'CREATE TABLE half (id integer); ALTER TABLE car ADD COLUMN half text';
    const failing = [{ name, sql: `${sql}; SELECT 1 / 0` }];
    await expect(applyMigrations(database.ownerUrl, failing)).rejects.toThrow(
      `The migration ${name} failed and was taken back whole: division by zero`,
    );
    expect(await readCatalogue()).toEqual(before);
    expect(await applyMigrations(database.ownerUrl, [{ name, sql }])).toEqual([name]);
    expect(await readCatalogue()).not.toEqual(before);
  });
});

/** Every column of every table, and the history of migrations. */
async function readCatalogue(): Promise<unknown[]> {
  const { rows } = await owner.query(`
    SELECT table_schema || '.' || table_name || '.' || column_name AS line FROM information_schema.columns
      WHERE table_schema IN ('public', 'auth')
    UNION ALL SELECT migration_name || ' ' || checksum FROM _prisma_migrations ORDER BY line`);
  return rows;
}
