import { randomUUID } from 'node:crypto';
import { callAppRouter } from '@halfshaft/api/router';
import { dueAt, servicesOf } from '@halfshaft/itinerary';
import { type DemoAccess, type DemoHouse, loadDemoEdition, loadDemoHouse } from '@halfshaft/prisma/demo';
import { withTeam } from '@halfshaft/store';
import type { House } from './house';

/** The demo as `npm start` loads it, in a house of a test, with a cookie for each account. */
export interface DemoWorld {
  demo: DemoHouse;
  /** By team key: the event's id. */
  events: Record<string, string>;
  cookieOf(userId: string): string;
}

const SECONDS_INTO_SERVICE = 240;

export async function loadDemoWorld(house: House): Promise<DemoWorld> {
  const cookies = new Map<string, string>();
  const access: DemoAccess = {
    async signUp(name) {
      const { userId, cookie } = await house.signUp(name);
      cookies.set(userId, cookie);
      return userId;
    },
    callAs(userId, at) {
      const clock = { now: () => at ?? house.clock.now() };
      return callAppRouter({
        store: house.store,
        openPasswordLink: house.openPasswordLink,
        clock,
        planner: house.planner,
        account: { userId, isAnonymous: false },
      });
    },
    today: (timeZone) => new Intl.DateTimeFormat('sv-SE', { timeZone }).format(house.clock.now()),
    async setEventClock({ teamId, founderUserId }, replica, position) {
      const second = servicesOf(replica.itinerary)[1];
      const shown = dueAt(replica.itinerary, second?.inIndex ?? 0, position) + SECONDS_INTO_SERVICE;
      const clockOffsetSeconds = shown - Math.floor(house.clock.now() / 1000);
      await withTeam(house.store, { teamId, userId: founderUserId }, async ({ db }) => {
        await db.event.update({
          where: { teamId_id: { teamId, id: replica.eventId } },
          data: { clockOffsetSeconds },
        });
      });
    },
    newId: () => randomUUID(),
  };
  const demo = await loadDemoHouse(access);
  const { events } = await loadDemoEdition(access, demo);
  return { demo, events, cookieOf: (userId) => cookies.get(userId) ?? '' };
}
