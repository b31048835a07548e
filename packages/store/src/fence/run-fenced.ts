import { Prisma } from '../client/generated/client';
import { clientOf, type Store } from '../client/store';

/** The settings row-level security reads; each is local to the transaction. An absent one is the empty string. */
export interface FenceSettings {
  team?: string;
  organiser?: string;
  user?: string;
  invite?: string;
}

export type TransactionClient = Prisma.TransactionClient;

/** A transaction that lost against another one is run again from its beginning, this often at most. */
const MOST_ATTEMPTS = 4;
/** A burst queues here and not in the database. */
const LONGEST_WAIT_MS = 60_000;
const LONGEST_RUN_MS = 15_000;

/**
 * One transaction: begin, settings, work, commit. No solver, file or network call belongs inside `work`.
 * A serialisation failure or deadlock repeats the whole of it, so `work` must not keep state between calls.
 */
export async function runFenced<T>(
  store: Store,
  settings: FenceSettings,
  work: (db: TransactionClient) => Promise<T>,
  longestRunMs = LONGEST_RUN_MS,
): Promise<T> {
  for (let attempt = 1; ; attempt += 1) {
    try {
      return await clientOf(store).$transaction(
        async (db) => {
          await applySettings(db, settings);
          return work(db);
        },
        { maxWait: LONGEST_WAIT_MS, timeout: longestRunMs },
      );
    } catch (error) {
      if (attempt >= MOST_ATTEMPTS || !isLostRace(error)) throw error;
    }
  }
}

/** All four are set every time: with a pooler, the connection may have served another tenant a moment ago. */
export async function applySettings(db: TransactionClient, settings: FenceSettings): Promise<void> {
  await db.$queryRaw`SELECT
    set_config('halfshaft.team', ${settings.team ?? ''}, true),
    set_config('halfshaft.organiser', ${settings.organiser ?? ''}, true),
    set_config('halfshaft.user', ${settings.user ?? ''}, true),
    set_config('halfshaft.invite', ${settings.invite ?? ''}, true)`;
}

/** PostgreSQL's codes for a serialisation failure, a deadlock, and a key someone else took a moment earlier. */
const LOST_RACES = ['40001', '40P01', '23505'];

/**
 * Prisma says P2034 for a write conflict or deadlock and P2002 for a taken key; raw statements carry PostgreSQL's own
 * code. Run again, the work sees what the other one wrote and answers with a sentence. Callers may have wrapped the error.
 */
function isLostRace(error: unknown): boolean {
  if (!(error instanceof Error)) return false;
  if (!(error instanceof Prisma.PrismaClientKnownRequestError)) return isLostRace(error.cause);
  if (error.code === 'P2034' || error.code === 'P2002') return true;
  const detail = JSON.stringify(error.meta ?? {});
  return error.code === 'P2010' && LOST_RACES.some((code) => detail.includes(code));
}
