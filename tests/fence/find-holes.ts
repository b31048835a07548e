import type pg from 'pg';
import {
  type Effect,
  type FenceValues,
  isRightMissing,
  isRowRefused,
  setFence,
  tryOut,
} from './fenced-session';
import { TABLE_PROBES } from './probe-rows';
import type { Seed } from './seed';
import { SELECT_PROBES } from './select-probes';
import { listTables } from './table-state';

/** One table as both tenants hold it: the tenant's id, a row of theirs and a new row that would fit beside it. */
export interface ProbedTable {
  table: string;
  tenant: string;
  mine: Side;
  others: Side;
}

interface Side {
  id: string;
  count: number;
  /** A row that does not exist yet and breaks no key. */
  fresh: Record<string, unknown>;
}

/** Read once, as the owner, before anything is tampered with. */
export async function readProbedTables(owner: pg.Client, mine: Seed, others: Seed): Promise<ProbedTable[]> {
  const tables: ProbedTable[] = [];
  for (const { table, tenant } of await listTables(owner)) {
    const sides = {
      mine: await readSide(owner, table, tenant, mine),
      others: await readSide(owner, table, tenant, others),
    };
    tables.push({ table, tenant, ...sides });
  }
  return tables;
}

async function readSide(owner: pg.Client, table: string, tenant: string, seed: Seed): Promise<Side> {
  const probe = TABLE_PROBES[table];
  if (!probe) throw new Error(`The table ${table} has no probe.`);
  const id = tenant === 'team_id' ? seed.teamId : seed.organiser.organiserId;
  const { rows } = await owner.query<{ row: object }>(
    `SELECT to_jsonb(t) AS row FROM ${table} t WHERE ${tenant} = $1`,
    [id],
  );
  if (!rows[0]) throw new Error(`The seed has no row in ${table}.`);
  return { id, count: rows.length, fresh: { ...rows[0].row, ...probe.fresh(seed.spareKeys) } };
}

/**
 * Everything that is wrong with the fence around one table, one sentence each; empty when it holds. The transaction under
 * way must have been given the app's role already. Leaves nothing behind.
 */
export async function findHoles(
  app: pg.Client,
  probed: ProbedTable,
  seeds: { mine: Seed; others: Seed },
): Promise<string[]> {
  const { table } = probed;
  const special = await SELECT_PROBES[table]?.(app, seeds);
  const all = [
    ...(await findReadHoles(app, probed)),
    ...(await findInsertHoles(app, probed)),
    ...(await findUpdateHoles(app, probed)),
    ...(await findDeleteHoles(app, probed)),
    ...(special ?? []),
  ];
  return all.map((hole) => `${table}: ${hole}`);
}

async function findReadHoles(app: pg.Client, { table, tenant, mine }: ProbedTable): Promise<string[]> {
  await setFence(app, fenceOf(tenant, mine.id));
  const own = await tryOut(app, `SELECT FROM ${table} WHERE ${tenant} = $1`, [mine.id]);
  const foreign = await tryOut(app, `SELECT FROM ${table} WHERE ${tenant} <> $1`, [mine.id]);
  await setFence(app, {});
  const unfenced = await tryOut(app, `SELECT FROM ${table}`);
  return [
    ...holeUnless(touched(own) === mine.count, 'own rows are not all visible'),
    ...holeUnless(touched(foreign) === 0, "another's rows are visible"),
    ...holeUnless(touched(unfenced) === 0, 'rows are visible without any setting'),
  ];
}

async function findInsertHoles(
  app: pg.Client,
  { table, tenant, mine, others }: ProbedTable,
): Promise<string[]> {
  const insert = `INSERT INTO ${table} SELECT * FROM jsonb_populate_record(NULL::${table}, $1)`;
  await setFence(app, fenceOf(tenant, String(mine.fresh[tenant])));
  const own = await tryOut(app, insert, [mine.fresh]);
  await setFence(app, fenceOf(tenant, mine.id));
  const foreign = await tryOut(app, insert, [others.fresh]);
  await setFence(app, {});
  const unfenced = await tryOut(app, insert, [others.fresh]);
  return [
    ...holeUnless(touched(own) === 1, `an own row can't be inserted (${tellOf(own)})`),
    ...holeUnless(isRowRefused(foreign), "a row can be inserted for another's"),
    ...holeUnless(isRowRefused(unfenced), 'a row can be inserted without any setting'),
  ];
}

async function findUpdateHoles(
  app: pg.Client,
  { table, tenant, mine, others }: ProbedTable,
): Promise<string[]> {
  const column = TABLE_PROBES[table]?.changes ?? null;
  await setFence(app, fenceOf(tenant, mine.id));
  const change = `UPDATE ${table} SET ${column ?? tenant} = ${column ?? tenant} WHERE ${tenant} = $1`;
  const own = await tryOut(app, change, [mine.id]);
  const foreign = await tryOut(app, change, [others.id]);
  if (column === null) return holeUnless(isRightMissing(own), 'the app may update what is written once');
  const move = await tryOut(app, `UPDATE ${table} SET ${tenant} = $2 WHERE ${tenant} = $1`, [
    mine.id,
    others.id,
  ]);
  return [
    ...holeUnless(touched(own) === mine.count, `own rows can't be updated (${tellOf(own)})`),
    ...holeUnless(touched(foreign) === 0, "another's rows can be updated"),
    ...holeUnless(isRowRefused(move), `a row can be moved to another (${tellOf(move)})`),
  ];
}

async function findDeleteHoles(
  app: pg.Client,
  { table, tenant, mine, others }: ProbedTable,
): Promise<string[]> {
  await setFence(app, fenceOf(tenant, mine.id));
  const remove = `DELETE FROM ${table} WHERE ${tenant} = $1`;
  const own = await tryOut(app, remove, [mine.id]);
  const foreign = await tryOut(app, remove, [others.id]);
  if (!TABLE_PROBES[table]?.mayDelete) return holeUnless(isRightMissing(own), 'the app may delete');
  return [
    ...holeUnless(touched(own) === mine.count, `own rows can't be deleted (${tellOf(own)})`),
    ...holeUnless(touched(foreign) === 0, "another's rows can be deleted"),
  ];
}

function fenceOf(tenant: string, id: string): FenceValues {
  return tenant === 'team_id' ? { team: id } : { organiser: id };
}

/** Rows read or written; a refusal is none and never equals a count. */
function touched(effect: Effect): number {
  return effect.ok ? effect.count : -1;
}

function tellOf(effect: Effect): string {
  return effect.ok ? `${effect.count} rows` : effect.message;
}

export function holeUnless(holds: boolean, hole: string): string[] {
  return holds ? [] : [hole];
}
