import { randomUUID } from 'node:crypto';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { buildApp } from '@halfshaft/api/app';
import { createAuth } from '@halfshaft/api/auth';
import { openLiveLog } from '@halfshaft/api/live';
import { passwordLinksOf } from '@halfshaft/api/password-link';
import { openPlanner } from '@halfshaft/api/planner';
import { callAppRouter } from '@halfshaft/api/router';
import { readNews } from '@halfshaft/api/work';
import { DEMO_ITINERARY } from '@halfshaft/prisma/demo';
import { openStore } from '@halfshaft/store';
import { type DatabaseUrls, prepareDatabase, startEmbedded } from '@halfshaft/store/embedded';
import pg from 'pg';
import { SECRET } from '../support/secret';

export const POOL_SIZE = 10;
const LOGINS = { appPassword: 'app-in-bench', authPassword: 'auth-in-bench' };
/** More cards than one run claims: each claim is of a fresh one. */
const CARDS = 6_000;

export interface Bench {
  urls: DatabaseUrls;
  apiUrl: string;
  cookie: string;
  teamId: string;
  personId: string;
  eventId: string;
  entryId: string;
  cardIds: string[];
  close(): Promise<void>;
}

/** The whole service on a database of its own that syncs every commit to disk, with a team and an event. */
export async function openBench({ manyCards = true } = {}): Promise<Bench> {
  const folder = await mkdtemp(join(tmpdir(), 'halfshaft-bench-'));
  await chmod(folder, 0o755); // the database runs as another user when we are root
  const server = await startEmbedded({ folder: join(folder, 'data'), password: 'bench', durable: true });
  const urls = await prepareDatabase(server.adminUrl, 'bench', LOGINS);
  const store = openStore({ pooledUrl: urls.appUrl, poolSize: POOL_SIZE });
  const signIn = createAuth({ authUrl: urls.authUrl, secret: SECRET, publicUrl: 'http://localhost' });
  const live = await openLiveLog(urls.appUrl, (...asked) => readNews(store, ...asked));
  const clock = { now: () => Date.now() };
  const planner = openPlanner();
  const parts = { store, auth: signIn.auth, live, clock, planner, pages: { kind: 'none' as const } };
  const openPasswordLink = passwordLinksOf(signIn.auth);
  const app = await buildApp({ ...parts, photoLimits: { eventBytes: 0, teamBytes: 0 }, logLevel: 'silent' });
  const apiUrl = await app.listen({ host: '127.0.0.1', port: 0 });

  const email = `${randomUUID()}@bench.example`;
  const { headers, response } = await signIn.auth.api.signUpEmail({
    body: { name: 'Bench', email, password: 'a long enough password' },
    returnHeaders: true,
  });
  const pairs = headers.getSetCookie().map((each) => each.split(';')[0]);
  const account = { userId: response.user.id, isAnonymous: false };
  const team = await foundTeam(callAppRouter({ store, openPasswordLink, clock, planner, account }));
  const cardIds = manyCards ? await copyCards(urls.ownerUrl, team.carId) : [];
  return {
    urls,
    apiUrl,
    cookie: pairs.join('; '),
    ...team,
    cardIds,
    async close() {
      await app.close();
      await planner.close();
      await live.close();
      await signIn.close();
      await store.close();
      await server.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

async function foundTeam(caller: ReturnType<typeof callAppRouter>) {
  const { teamId, personId } = await caller.team.create({ name: 'Bench', personName: 'Bench' });
  const named = { name: 'Car', drive: 'front' as const, surface: 'gravel' as const };
  const { carId } = await caller.car.create({ teamId, ...named, starterCards: 'small' });
  const itinerary = {
    ...{ source: DEMO_ITINERARY, timeZone: 'Europe/London', startsOn: '2026-06-13' },
    ...{ roadTimedFrom: 'stageStart' as const, startIntervalSeconds: 60, defaultGapSeconds: 180 },
  };
  const created = await caller.event.create({ teamId, name: 'Event', itinerary });
  if (!created.ok) throw new Error('The demo itinerary has a problem.');
  const { eventId } = created;
  const entry = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...entry });
  return { teamId, personId, carId, eventId, entryId };
}

async function copyCards(ownerUrl: string, carId: string): Promise<string[]> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    const { rows } = await client.query<{ id: string }>(
      `INSERT INTO card (team_id, id, car_id, ordinal, body, created_at)
       SELECT team_id, gen_random_uuid(), car_id, 1000 + n, body, created_at
       FROM (SELECT * FROM card WHERE car_id = $1 ORDER BY ordinal LIMIT 1) first, generate_series(1, $2::int) n
       RETURNING id`,
      [carId, CARDS],
    );
    await client.query('ANALYZE');
    return rows.map((row) => row.id);
  } finally {
    await client.end();
  }
}
