import { randomUUID } from 'node:crypto';
import { asUser, openStore, type TeamTx, withTeam } from '@halfshaft/store';
import pg from 'pg';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, it } from 'vitest';
import { type House, openHouse } from '../support/house';
import { isRightMissing, isRowRefused, setFence, tryOut } from './fenced-session';
import { type Seed, seedWorld } from './seed';
import { changedPlaces, listTables, readState, type TableState } from './table-state';

const FOREIGN_KEY_BROKEN = '23503';

let house: House;
let owner: pg.Client;
/** The app's own login, no superuser that plays it. */
let app: pg.Client;
let mine: Seed;
let others: Seed;
let tables: { table: string; tenant: string }[];
let before: TableState;

beforeAll(async () => {
  house = await openHouse();
  owner = new pg.Client({ connectionString: house.database.ownerUrl });
  app = new pg.Client({ connectionString: house.database.appUrl });
  await Promise.all([owner.connect(), app.connect()]);
  mine = await seedWorld(house, owner);
  others = await seedWorld(house, owner);
  tables = await listTables(owner);
  before = await readState(owner);
});
afterAll(async () => {
  await owner?.end();
  await app?.end();
  await house?.close();
});

const teamTables = () => tables.filter(({ tenant }) => tenant === 'team_id');

describe('without a setting', () => {
  it('no row of any table is seen', async () => {
    for (const { table } of tables) {
      expect((await app.query(`SELECT FROM ${table}`)).rowCount, table).toBe(0);
    }
  });

  it.each(['not-a-uuid', '%', `' OR true --`])('a team called %s is an error and no way in', async (team) => {
    await app.query('BEGIN');
    await setFence(app, { team });
    const effect = await tryOut(app, 'SELECT FROM card');
    await app.query('ROLLBACK');
    expect(effect).toMatchObject({ ok: false, code: '22P02' });
  });
});

describe("with one team's setting", () => {
  beforeEach(async () => {
    await app.query('BEGIN');
    await setFence(app, { team: mine.teamId });
  });
  // Committed and not rolled back: what must not happen would then be there to see.
  afterEach(async () => {
    await app.query('COMMIT');
    expect(changedPlaces(before, await readState(owner))).toEqual([]);
  });

  it("no row of another's is selected, updated or deleted", async () => {
    for (const { table, tenant } of tables) {
      const id = tenant === 'team_id' ? others.teamId : others.organiser.organiserId;
      expect((await app.query(`SELECT FROM ${table} WHERE ${tenant} = $1`, [id])).rowCount, table).toBe(0);
      for (const sql of [`UPDATE ${table} SET ${tenant} = ${tenant}`, `DELETE FROM ${table}`]) {
        await app.query('SAVEPOINT one');
        const result = await app.query(`${sql} WHERE ${tenant} = $1`, [id]).catch((error: Error) => error);
        if (result instanceof Error) expect(result.message).toContain('permission denied');
        else expect(result.rowCount, `${sql} changed rows`).toBe(0);
        if (result instanceof Error) await app.query('ROLLBACK TO SAVEPOINT one');
      }
    }
  });

  it('only own rows are found by joins, subqueries, set operations and counts', async () => {
    const queries = [
      'SELECT b.team_id FROM card a JOIN car b ON true',
      'SELECT b.team_id FROM team a FULL JOIN person b ON a.team_id <> b.team_id OR true',
      'SELECT team_id FROM person UNION ALL SELECT team_id FROM membership',
      'SELECT team_id FROM card WHERE car_id IN (SELECT id FROM car)',
      `WITH every AS MATERIALIZED (SELECT * FROM log_entry) SELECT team_id FROM every`,
      `SELECT a.team_id FROM action a, LATERAL (SELECT * FROM event e WHERE e.id = a.event_id) e`,
    ];
    for (const query of queries) {
      const { rows } = await app.query<{ team_id: string }>(query);
      expect(new Set(rows.map((row) => row.team_id)), query).toEqual(new Set([mine.teamId]));
    }
    const counted = await app.query(`SELECT count(*)::int AS found FROM car WHERE id = $1`, [others.carId]);
    expect(counted.rows).toEqual([{ found: 0 }]);
  });

  it('no condition is asked of rows of others before the fence has removed them', async () => {
    // Would divide by zero on the first row of another team.
    const query = `SELECT id FROM car WHERE 1 / (CASE WHEN team_id = $1 THEN 1 ELSE 0 END) = 1`;
    const { rowCount } = await app.query(query, [mine.teamId]);
    expect(rowCount).toBeGreaterThan(0);
  });

  it("no row is inserted for another's", async () => {
    for (const { table } of teamTables()) {
      const copy = await owner.query(`SELECT to_jsonb(t) AS row FROM ${table} t WHERE team_id = $1 LIMIT 1`, [
        others.teamId,
      ]);
      const insert = `INSERT INTO ${table} SELECT * FROM jsonb_populate_record(NULL::${table}, $1)`;
      const effect = await tryOut(app, insert, [{ ...copy.rows[0].row, id: randomUUID() }]);
      expect(isRowRefused(effect), `${table}: ${JSON.stringify(effect)}`).toBe(true);
    }
  });

  it("no conflict clause reaches another's row", async () => {
    const insert = `INSERT INTO car (team_id, id, name, drive, surface, created_at) VALUES ($1, $2, 'Taken', 'four', 'snow', now())
      ON CONFLICT (team_id, id) DO UPDATE SET name = 'Taken' RETURNING *`;
    expect(isRowRefused(await tryOut(app, insert, [others.teamId, others.carId]))).toBe(true);
  });

  it.each([
    ['a card to a car', 'UPDATE card SET car_id = $1', () => others.carId],
    [
      'an entry to an event',
      'UPDATE entry SET event_id = $1 WHERE id = (SELECT id FROM entry LIMIT 1)',
      () => others.eventId,
    ],
    ['an entry to a car', 'UPDATE entry SET car_id = $1', () => others.carId],
    ['a membership to a person', 'UPDATE membership SET person_id = $1', () => others.owner.personId],
    ['a membership to an event', 'UPDATE membership SET event_id = $1', () => others.eventId],
    ['an invitation to an event', 'UPDATE invite SET event_id = $1', () => others.eventId],
    ['a task to a holder', 'UPDATE task SET holder = $1', () => others.owner.personId],
    ['a task to a card', 'UPDATE task SET card_id = $1', () => others.cardId],
    ['a snag to an entry', 'UPDATE snag SET entry_id = $1', () => others.entryId],
  ])("no foreign key leads %s of another's", async (_what, sql, target) => {
    expect(await tryOut(app, sql, [target()])).toMatchObject({ ok: false, code: FOREIGN_KEY_BROKEN });
  });

  it("no new row points at another's", async () => {
    const insert = `INSERT INTO card SELECT team_id, gen_random_uuid(), $1, ordinal, body, created_at FROM card LIMIT 1`;
    expect(await tryOut(app, insert, [others.carId])).toMatchObject({ ok: false, code: FOREIGN_KEY_BROKEN });
    const own = await tryOut(app, insert, [mine.idleCarId]);
    expect(own).toMatchObject({ ok: true, count: 1 });
  });

  it('the log and the actions are neither changed nor removed, their own either', async () => {
    for (const sql of ['UPDATE log_entry SET kind = kind', 'UPDATE action SET content = content']) {
      expect(isRightMissing(await tryOut(app, sql)), sql).toBe(true);
    }
    for (const table of ['log_entry', 'action']) {
      expect(isRightMissing(await tryOut(app, `DELETE FROM ${table}`)), table).toBe(true);
      expect(isRightMissing(await tryOut(app, `TRUNCATE ${table} CASCADE`)), table).toBe(true);
    }
  });

  it('the fence is not switched off', async () => {
    await app.query('SAVEPOINT one');
    await app.query('SET LOCAL row_security = off');
    await expect(app.query('SELECT FROM card')).rejects.toThrow('would be affected by row-level security');
    await app.query('ROLLBACK TO SAVEPOINT one');
    const { rows } = await owner.query<{ name: string }>('SELECT current_user AS name');
    const attempts = [
      `SET ROLE ${rows[0]?.name}`,
      'SET ROLE halfshaft_auth',
      `SET SESSION AUTHORIZATION ${rows[0]?.name}`,
      'ALTER TABLE card DISABLE ROW LEVEL SECURITY',
      'DROP POLICY card_own ON card',
      'CREATE POLICY all_of_it ON card USING (true)',
      'SET LOCAL session_replication_role = replica',
      `CREATE OR REPLACE FUNCTION current_team() RETURNS uuid LANGUAGE sql AS 'SELECT null::uuid'`,
      'ALTER ROLE halfshaft_app BYPASSRLS',
      `COPY card TO '/tmp/cards'`,
      'SELECT * FROM auth.session',
      'SELECT * FROM _prisma_migrations',
    ];
    for (const sql of attempts)
      expect(await tryOut(app, sql), sql).toMatchObject({ ok: false, code: '42501' });
  });
});

describe('settings', () => {
  it('last as long as their transaction: the next one on the same connection sees nothing', async () => {
    for (const end of ['COMMIT', 'ROLLBACK']) {
      await app.query('BEGIN');
      await setFence(app, { team: mine.teamId, user: mine.owner.userId });
      expect((await app.query('SELECT FROM card')).rowCount).toBeGreaterThan(0);
      await app.query(end);
      expect((await app.query('SELECT FROM card')).rowCount).toBe(0);
      expect((await app.query('SELECT FROM membership')).rowCount).toBe(0);
    }
  });

  it('of the store end with its transaction, before the connection is used again', async () => {
    const { teamId, owner: founder } = mine;
    await withTeam(house.store, { teamId, userId: founder.userId }, async ({ db }) => {
      expect(await settingsOf(db)).toEqual([teamId, '', founder.userId, '']);
      // Ends the store's transaction under its feet; what is still set now would be set for the next one.
      await db.$executeRawUnsafe('COMMIT');
      expect(await settingsOf(db)).toEqual(['', '', '', '']);
    });
  });

  it('do not pass from one use of a pooled connection to the next', async () => {
    const store = openStore({ pooledUrl: house.database.appUrl, poolSize: 1 });
    const teamIds = (db: TeamTx['db']) =>
      db.card.findMany().then((rows) => new Set(rows.map((row) => row.teamId)));
    try {
      const inTeam = ({ teamId, owner: { userId } }: Seed) =>
        withTeam(store, { teamId, userId }, async (tx) => [await backendOf(tx.db), await teamIds(tx.db)]);
      const alone = (userId: string) =>
        asUser(store, userId, async (tx) => [await backendOf(tx.db), await teamIds(tx.db)]);
      const first = await inTeam(mine);
      expect(first[1]).toEqual(new Set([mine.teamId]));
      expect(await alone(mine.owner.userId)).toEqual([first[0], new Set()]);
      expect(await inTeam(others)).toEqual([first[0], new Set([others.teamId])]);
      const failing = withTeam(store, { teamId: mine.teamId, userId: mine.owner.userId }, async () => {
        throw new Error('half way');
      });
      await expect(failing).rejects.toThrow('half way');
      expect(await alone(mine.owner.userId)).toEqual([first[0], new Set()]);
    } finally {
      await store.close();
    }
  });

  it('hold a query that forgot to name its team', async () => {
    const { teamId, owner: founder } = mine;
    await withTeam(house.store, { teamId, userId: founder.userId }, async ({ db }) => {
      const models = [
        db.team,
        db.person,
        db.car,
        db.card,
        db.event,
        db.itineraryVersion,
        db.entry,
        db.invite,
      ];
      const log = [db.logHead, db.action, db.logEntry, db.task, db.snag];
      const rest = [db.stageRun, db.controlTime, db.carFact, db.appliedAction, db.photo];
      for (const model of [...models, ...log, ...rest] as { findMany(): Promise<{ teamId: string }[]> }[]) {
        expect(new Set((await model.findMany()).map((row) => row.teamId))).toEqual(new Set([teamId]));
      }
    });
  });
});

async function backendOf(db: TeamTx['db']): Promise<unknown> {
  const rows = await db.$queryRaw<{ pid: number }[]>`SELECT pg_backend_pid() AS pid`;
  return rows[0]?.pid;
}

async function settingsOf(db: TeamTx['db']): Promise<unknown> {
  const [row] = await db.$queryRaw<{ settings: string[] }[]>`SELECT ARRAY[
    current_setting('halfshaft.team'), current_setting('halfshaft.organiser'),
    current_setting('halfshaft.user'), current_setting('halfshaft.invite')] AS settings`;
  return row?.settings;
}
