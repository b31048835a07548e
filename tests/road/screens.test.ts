import { existsSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { type DemoWorld, loadDemoWorld } from '../support/demo-house';
import { ITINERARY } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PAGES_FOLDER, PHONE } from '../support/screens';
import { type ScreenIds, type ScreenState, screenTable } from './screen-table';

const SIZES = [PHONE, DESK];
// What the palette can break; the rest of the page is the one looked at just before.
const COLOURS = ['color-contrast', 'link-in-text-block'];

const house = keepHouse({ pages: PAGES });
let ids: ScreenIds;
let cookies: Record<ScreenState['who'], string>;
beforeAll(async () => {
  const world = await loadDemoWorld(house);
  ({ ids, cookies } = await furnish(world));
});

/** Beside the demo: someone who has just begun, with a team, a bare car and an event nobody has entered. */
async function furnish({ demo, events, cookieOf }: DemoWorld) {
  const birch = demo.teams.birch;
  const event = events.birch;
  if (!birch || !event) throw new Error('The demo has no team of that key.');
  const member = house.callAs(birch.founderUserId);
  const replica = await member.event.get({ teamId: birch.teamId, eventId: event });
  const entry = replica.entries[0];
  if (!entry) throw new Error('The demo team has entered no car.');
  const published = await issueBulletin(demo.organiser);
  const newcomer = await house.signUp('New Founder');
  const caller = house.callAs(newcomer.userId);
  const { teamId } = await caller.team.create({ name: 'New Team', personName: 'New Founder' });
  const bare = {
    name: 'Bare car',
    drive: 'rear' as const,
    surface: 'tarmac' as const,
    starterCards: 'none' as const,
  };
  const { carId } = await caller.car.create({ teamId, ...bare });
  const created = await caller.event.create({ teamId, name: 'Empty event', itinerary: ITINERARY });
  if (!created.ok) throw new Error('The fixture itinerary has a problem.');
  const newOrganiser = await house.signUp('New Organiser');
  const { organiserId } = await house.callAs(newOrganiser.userId).organiser.create({ name: 'New Club' });
  return {
    ids: {
      team: birch.teamId,
      event,
      entry: entry.entryId,
      car: entry.car.carId,
      organiser: demo.organiser.organiserId,
      published,
      emptyTeam: teamId,
      emptyEvent: created.eventId,
      emptyCar: carId,
      emptyOrganiser: organiserId,
    },
    cookies: {
      nobody: '',
      member: cookieOf(birch.founderUserId),
      newcomer: newcomer.cookie,
      organiser: cookieOf(demo.organiser.userId),
      newOrganiser: newOrganiser.cookie,
    },
  };
}

/** The demo's organiser issues a bulletin that no team has accepted, and drafts another one. */
async function issueBulletin({ userId, organiserId }: { userId: string; organiserId: string }) {
  const organiser = house.callAs(userId);
  const [event] = await organiser.organiser.events({ organiserId });
  if (!event?.itineraryText) throw new Error('The demo has no published event.');
  const { publishedEventId, name, itineraryText } = event;
  const own = { organiserId, publishedEventId };
  const draft = async (startIntervalSeconds: number) => {
    await organiser.organiser.saveEvent({
      ...own,
      name,
      itinerary: { ...itineraryText, startIntervalSeconds },
    });
    return (await organiser.bulletin.list(own)).draft?.itineraryNumber ?? 0;
  };
  await organiser.bulletin.issue({
    ...own,
    itineraryNumber: await draft(120),
    note: 'Dust hangs: wider gaps.',
  });
  await draft(90);
  return publishedEventId;
}

/** The routes of the build, from its own files. */
function builtRoutes(): string[] {
  const names = readdirSync(PAGES_FOLDER, { recursive: true }).map(String);
  const pages = names.filter(
    (name) => /(^|\/)index\.html$/.test(name) && !name.startsWith('_') && !name.startsWith('404'),
  );
  return pages.map((name) => `/${name.replace(/index\.html$/, '')}`).sort();
}

describe('every screen', () => {
  it('is in the table, and no other', () => {
    expect(existsSync(join(PAGES_FOLDER, 'index.html'))).toBe(true);
    expect(Object.keys(screenTable(ids)).sort()).toEqual(builtRoutes());
  });

  for (const route of builtRoutes()) {
    it(`${route} on a phone and a desk, light and dark: accessible, inside its width, without complaints`, async () => {
      for (const screen of screenTable(ids)[route] ?? []) await look(route, screen);
    });
  }
});

/** Loads a state once: what the width and the palette change is done by style sheets, so the open page is made wider and darker. */
async function look(route: string, screen: ScreenState): Promise<void> {
  const { page } = await openPage({
    ...PHONE,
    baseUrl: house.url,
    cookie: cookies[screen.who],
    tolerated: screen.tolerated ?? [],
  });
  await page.goto(route + screen.query);
  await page.getByText(screen.shows).filter({ visible: true }).first().waitFor({ timeout: 15_000 });
  await page.waitForLoadState('load');
  const name = `${route.replaceAll('/', '-').replace(/^-|-$/g, '') || 'start'}-${screen.state}`;
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await page.emulateMedia({ colorScheme: 'light' });
    await expectAccessible(page, `${name}-${size.width}-light`);
    await page.emulateMedia({ colorScheme: 'dark' });
    await expectAccessible(page, `${name}-${size.width}-dark`, COLOURS);
  }
}
