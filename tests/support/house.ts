import { randomUUID } from 'node:crypto';
import { buildApp } from '@halfshaft/api/app';
import { createAuth } from '@halfshaft/api/auth';
import { type LiveLog, openLiveLog } from '@halfshaft/api/live';
import type { PageSource } from '@halfshaft/api/pages';
import { mayUsePasswordLink } from '@halfshaft/api/password';
import { passwordLinksOf } from '@halfshaft/api/password-link';
import { moveMemberships } from '@halfshaft/api/people';
import { type OpenPlanner, openPlanner } from '@halfshaft/api/planner';
import { callAppRouter, type DemoApi } from '@halfshaft/api/router';
import { readNews } from '@halfshaft/api/work';
import { openStore, type Store } from '@halfshaft/store';
import { cloneDatabase, type TestDatabase } from '@halfshaft/store/embedded';
import type { FastifyInstance } from 'fastify';
import { inject } from 'vitest';
import { SECRET } from './secret';

export type Caller = DemoApi;

export interface House {
  database: TestDatabase;
  store: Store;
  app: FastifyInstance;
  openPasswordLink: ReturnType<typeof passwordLinksOf>;
  live: LiveLog;
  planner: OpenPlanner;
  /** Where the front door listens. */
  url: string;
  /** Milliseconds; a test may set it. */
  clock: { now(): number; set(at: number): void };
  /** Calls procedures as this account, without a network. */
  callAs(userId: string): Caller;
  /** Makes an account through sign-in; returns its id and the cookie that acts as it. */
  signUp(name: string): Promise<{ userId: string; cookie: string; email: string }>;
  /** An account without e-mail or password, as helpers have who come by a link. */
  signInAnonymously(): Promise<{ userId: string; cookie: string }>;
  close(): Promise<void>;
}

export const PASSWORD = 'a long enough password';

export interface HouseOptions {
  /** A database another house already opened: a second process on the same data. */
  database?: TestDatabase;
  pages?: PageSource;
  /** The same address again, for a server that comes back; left away, any free one. */
  port?: number;
  poolSize?: number;
  photoLimits?: { eventBytes: number; teamBytes: number };
}

const ROOMY = { eventBytes: 50_000_000, teamBytes: 50_000_000 };

/** The whole service in this process, listening on a free port, on a database of its own. */
export async function openHouse(options: HouseOptions = {}): Promise<House> {
  const database = options.database ?? (await cloneDatabase(inject('adminUrl')));
  const clock = settableClock();
  const store = openStore({ pooledUrl: database.appUrl, poolSize: options.poolSize ?? 6 });
  const signIn = createAuth({
    authUrl: database.authUrl,
    secret: SECRET,
    publicUrl: 'http://localhost',
    onHelperAccount: (helper, account) => moveMemberships(store, helper, account),
    mayUsePasswordLink: (userId, token) => mayUsePasswordLink(store, userId, token),
  });
  const live = await openLiveLog(database.appUrl, (...asked) => readNews(store, ...asked));
  const planner = openPlanner();
  const pages = options.pages ?? { kind: 'none' as const };
  const photoLimits = options.photoLimits ?? ROOMY;
  const openPasswordLink = passwordLinksOf(signIn.auth);
  const parts = { store, auth: signIn.auth, live, clock, planner, pages, photoLimits };
  const app = await buildApp({ ...parts, logLevel: 'silent' });
  const url = await app.listen({ host: '127.0.0.1', port: options.port ?? 0 });
  return {
    database,
    store,
    app,
    openPasswordLink,
    live,
    planner,
    url,
    clock,
    callAs: (userId) =>
      callAppRouter({ store, openPasswordLink, clock, planner, account: { userId, isAnonymous: false } }),
    async signUp(name) {
      const email = `${randomUUID()}@test.example`;
      const { headers, response } = await signIn.auth.api.signUpEmail({
        body: { name, email, password: PASSWORD },
        returnHeaders: true,
      });
      return { userId: response.user.id, cookie: cookieOf(headers), email };
    },
    async signInAnonymously() {
      const { headers, response } = await signIn.auth.api.signInAnonymous({
        headers: new Headers(),
        returnHeaders: true,
      });
      if (!response) throw new Error('Signing in without a name gave no account.');
      return { userId: response.user.id, cookie: cookieOf(headers) };
    },
    async close() {
      await app.close();
      await planner.close();
      await live.close();
      await signIn.close();
      await store.close();
      if (!options.database) await database.drop();
    },
  };
}

function cookieOf(headers: Headers): string {
  const pairs = headers.getSetCookie().map((each) => each.split(';')[0]);
  return pairs.join('; ');
}

function settableClock(): House['clock'] {
  let fixed: number | null = null;
  return {
    now: () => fixed ?? Date.now(),
    set(at) {
      fixed = at;
    },
  };
}
