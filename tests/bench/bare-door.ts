import Fastify from 'fastify';
import pg from 'pg';
import type { Bench } from './open-bench';
import { POOL_SIZE } from './open-bench';
import type { Statement } from './record-statements';

/** The pool of the sign-in login is that small in the API too. */
const AUTH_POOL_SIZE = 4;

export interface Claim {
  actionId: string;
  cardId: string;
}

/**
 * A Fastify route with nothing in it but the statements of one recorded claim, sent through pg in the same order and the
 * same transaction, with the ids of the claim asked for in place of the recorded ones.
 */
export async function openBareDoor({ urls }: Bench, recorded: Statement[], from: Claim) {
  const auth = new pg.Pool({
    connectionString: urls.authUrl,
    max: AUTH_POOL_SIZE,
    options: '-c search_path=auth',
  });
  const pool = new pg.Pool({ connectionString: urls.appUrl, max: POOL_SIZE });
  const signIn = recorded.filter((each) => each.login === 'halfshaft_auth');
  const claim = recorded.filter((each) => each.login === 'halfshaft_app');
  const app = Fastify({ logger: false });
  app.post<{ Body: Claim }>('/claim', async ({ body }) => {
    const valuesFor = (each: Statement) => each.values.map((value) => withIds(value, from, body));
    for (const each of signIn) await auth.query(each.text, valuesFor(each));
    const client = await pool.connect();
    try {
      for (const each of claim) await client.query(each.text, valuesFor(each));
    } finally {
      client.release();
    }
    return { ok: true };
  });
  const url = await app.listen({ host: '127.0.0.1', port: 0 });
  return {
    url: `${url}/claim`,
    async close() {
      await app.close();
      await auth.end();
      await pool.end();
    },
  };
}

function withIds(value: unknown, from: Claim, to: Claim): unknown {
  if (Array.isArray(value)) return value.map((each) => withIds(each, from, to));
  if (typeof value !== 'string') return value;
  return value.replaceAll(from.actionId, to.actionId).replaceAll(from.cardId, to.cardId);
}
