import type { TestDatabase } from '@halfshaft/store/embedded';
import type { WorkState } from '@halfshaft/worklog';
import { askOwner } from './table-hashes';

type Rows = Record<string, Record<string, unknown>>;

/** A state as the tables of the projection hold it: by table, then by id. */
export function rowsOf({ tasks, snags, stages, times, facts, actions }: WorkState): Rows {
  return {
    task: Object.fromEntries(tasks),
    snag: Object.fromEntries(snags),
    stage_run: Object.fromEntries(stages),
    control_time: Object.fromEntries(times),
    car_fact: Object.fromEntries(facts),
    applied_action: Object.fromEntries(actions),
  };
}

const TABLES = ['task', 'snag', 'stage_run', 'control_time', 'car_fact', 'applied_action'] as const;

/** What stands in these tables for one event. */
export async function readProjection(database: TestDatabase, eventId: string): Promise<Rows> {
  const selects = TABLES.map(
    (table) => `SELECT '${table}' AS table, id::text, body FROM ${table} WHERE event_id = $1`,
  );
  const found = await askOwner<{ table: string; id: string; body: unknown }>(
    database,
    selects.join(' UNION ALL '),
    [eventId],
  );
  const rows: Rows = Object.fromEntries(TABLES.map((table) => [table, {}]));
  for (const { table, id, body } of found) rows[table] = { ...rows[table], [id]: body };
  return rows;
}
