import { randomUUID } from 'node:crypto';
import { dueAt, servicesOf } from '@halfshaft/itinerary';
import {
  type DemoAccess,
  type DemoEdition,
  type DemoHouse,
  loadDemoEdition,
  loadDemoHouse,
} from '@halfshaft/prisma/demo';
import { openStore, withTeam } from '@halfshaft/store';
import { createAuth } from '../src/auth';
import { passwordLinksOf } from '../src/password-link';
import { callAppRouter } from '../src/root';
import { openPlanner } from '../src/workers/open-planner';
import { readMark, writeMark } from './home-folder';

interface DemoMark {
  house: DemoHouse;
  edition: DemoEdition;
  loadedAt: number;
}

export interface DemoSettings {
  appUrl: string;
  authUrl: string;
  secret: string;
  password: string;
}

/** After this long the demo's event is over: the next start puts on another edition of it, half run again. */
const EDITION_LASTS_MS = 14 * 3_600_000;
/** So far into its second service stands the leading car of each team. */
const SECONDS_INTO_SERVICE = 240;

/** Loads the demo on the first start, and a new edition of its event when the last one is over. */
export async function ensureDemo(settings: DemoSettings, say: (sentence: string) => void): Promise<void> {
  const mark = readMark<DemoMark>('demo');
  if (mark && Date.now() - mark.loadedAt < EDITION_LASTS_MS) return;
  say(mark ? 'Putting on the next edition of the demo event …' : 'Loading the demo …');
  const store = openStore({ pooledUrl: settings.appUrl, poolSize: 2 });
  const signIn = createAuth({
    authUrl: settings.authUrl,
    secret: settings.secret,
    publicUrl: 'http://localhost',
  });
  try {
    const access = demoAccess(store, signIn.auth, settings.password);
    const house = mark?.house ?? (await loadDemoHouse(access));
    const edition = await loadDemoEdition(access, house);
    writeMark('demo', { house, edition, loadedAt: Date.now() } satisfies DemoMark);
  } finally {
    await signIn.close();
    await store.close();
  }
}

function demoAccess(
  store: ReturnType<typeof openStore>,
  auth: ReturnType<typeof createAuth>['auth'],
  password: string,
): DemoAccess {
  const openPasswordLink = passwordLinksOf(auth);
  return {
    async signUp(name, email) {
      const { user } = await auth.api.signUpEmail({ body: { name, email, password } });
      return user.id;
    },
    callAs(userId, at) {
      const clock = { now: () => at ?? Date.now() };
      return callAppRouter({
        store,
        openPasswordLink,
        clock,
        planner: openPlanner(),
        account: { userId, isAnonymous: false },
      });
    },
    today: (timeZone) => new Intl.DateTimeFormat('sv-SE', { timeZone }).format(Date.now()),
    async setEventClock({ teamId, founderUserId }, replica, position) {
      const second = servicesOf(replica.itinerary)[1];
      if (!second) throw new Error('The demo itinerary has no second service.');
      const shown = dueAt(replica.itinerary, second.inIndex, position) + SECONDS_INTO_SERVICE;
      const clockOffsetSeconds = shown - Math.floor(Date.now() / 1000);
      await withTeam(store, { teamId, userId: founderUserId }, async ({ db }) => {
        await db.event.update({
          where: { teamId_id: { teamId, id: replica.eventId } },
          data: { clockOffsetSeconds },
        });
      });
    },
    newId: () => randomUUID(),
  };
}
