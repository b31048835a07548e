import pg from 'pg';

export interface FenceValues {
  team?: string;
  organiser?: string;
  user?: string;
  invite?: string;
}

/** What a statement did: how many rows, or the database's code and sentence for refusing it. */
export type Effect =
  | { ok: true; rows: Record<string, unknown>[]; count: number }
  | { ok: false; code: string; message: string };

/** PostgreSQL's code for both a missing right and a row that a policy refuses; the sentence tells which. */
export const REFUSED = '42501';

/** Sets what row-level security reads, for the transaction under way; what is left out is empty. */
export async function setFence(client: pg.Client, values: FenceValues): Promise<void> {
  const { team = '', organiser = '', user = '', invite = '' } = values;
  await client.query(
    `SELECT set_config('halfshaft.team', $1, true), set_config('halfshaft.organiser', $2, true),
            set_config('halfshaft.user', $3, true), set_config('halfshaft.invite', $4, true)`,
    [team, organiser, user, invite],
  );
}

/** Runs one statement inside the transaction under way and takes it back, whatever it did. */
export async function tryOut(client: pg.Client, sql: string, values: unknown[] = []): Promise<Effect> {
  await client.query('SAVEPOINT probe');
  try {
    const { rows, rowCount } = await client.query(sql, values);
    return { ok: true, rows, count: rowCount ?? 0 };
  } catch (error) {
    if (!(error instanceof pg.DatabaseError)) throw error;
    return { ok: false, code: error.code ?? '', message: error.message };
  } finally {
    await client.query('ROLLBACK TO SAVEPOINT probe');
  }
}

export function isRowRefused(effect: Effect): boolean {
  return !effect.ok && effect.code === REFUSED && effect.message.includes('row-level security');
}

export function isRightMissing(effect: Effect): boolean {
  return !effect.ok && effect.code === REFUSED && effect.message.includes('permission denied');
}
