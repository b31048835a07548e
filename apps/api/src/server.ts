import { openStore } from '@halfshaft/store';
import type { FastifyInstance } from 'fastify';
import { buildApp, type TlsParts } from './app';
import { createAuth } from './auth';
import { type Clock, systemClock } from './clock';
import type { Env } from './env';
import { mayUsePasswordLink } from './features/password/service';
import { moveMemberships } from './features/people/service';
import { openLiveLog } from './features/work/live';
import { readNews } from './features/work/service';
import type { PageSource } from './serve-pages';
import { openPlanner } from './workers/open-planner';

const BYTES_IN_MEGABYTE = 1_000_000;

export interface RunningApp {
  url: string;
  close(): Promise<void>;
}

export interface ServerOptions {
  pages: PageSource;
  clock?: Clock;
  /** Speaks https with these; left away, plain http, mostly behind a proxy. */
  tls?: TlsParts;
  /** Routes of this kind of start alone. */
  addRoutes?(app: FastifyInstance): void;
}

/** Opens everything one server needs, listens, and returns the address and the way to stop it all. */
export async function startServer(env: Env, options: ServerOptions): Promise<RunningApp> {
  const store = openStore({ pooledUrl: env.DATABASE_APP_URL, poolSize: env.DATABASE_POOL_SIZE });
  const signIn = createAuth({
    authUrl: env.DATABASE_AUTH_URL,
    secret: env.SIGN_IN_SECRET,
    publicUrl: env.PUBLIC_URL,
    onHelperAccount: (helper, account) => moveMemberships(store, helper, account),
    mayUsePasswordLink: (userId, token) => mayUsePasswordLink(store, userId, token),
  });
  const live = await openLiveLog(env.DATABASE_DIRECT_URL ?? env.DATABASE_APP_URL, (...asked) =>
    readNews(store, ...asked),
  );
  const planner = openPlanner();
  const closeParts = async () => {
    await planner.close();
    await live.close();
    await signIn.close();
    await store.close();
  };
  const app = await buildApp({
    store,
    auth: signIn.auth,
    live,
    clock: options.clock ?? systemClock,
    planner,
    pages: options.pages,
    logLevel: env.LOG_LEVEL,
    photoLimits: {
      eventBytes: env.PHOTO_EVENT_MEGABYTES * BYTES_IN_MEGABYTE,
      teamBytes: env.PHOTO_TEAM_MEGABYTES * BYTES_IN_MEGABYTE,
    },
    ...(options.tls && { tls: options.tls }),
  });
  options.addRoutes?.(app);
  try {
    const url = await app.listen({ host: env.HOST, port: env.PORT });
    return {
      url,
      async close() {
        await app.close();
        await closeParts();
      },
    };
  } catch (error) {
    await closeParts();
    throw error;
  }
}
