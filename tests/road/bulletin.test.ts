import { dueAt, formatClock } from '@halfshaft/itinerary';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { amended, publishAndTakeOver } from '../support/bulletin';
import { ITINERARY, joinTeam } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const SIZES = [PHONE, DESK];
const SCHEMES = ['light', 'dark'] as const;
const BEFORE_START = Date.parse('2026-06-13T05:00:00Z');
const NOTE = 'Timber lorries on Long Rigg. Questions to the clerk of the course.';

const house = keepHouse({ pages: PAGES });
beforeAll(async () => {
  house.clock.set(BEFORE_START);
});

it('goes from the organiser’s desk to the team’s service', async () => {
  const { organiserCookie, own, team, caller, ids, entryId } = await publishAndTakeOver(house);
  const desk = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  const event = { organiser: own.organiserId, event: own.publishedEventId };
  await desk.goto(`/organiser/?${new URLSearchParams(event)}`);
  await desk.getByText('it stays a draft that only you see', { exact: false }).waitFor();
  await desk.getByRole('heading', { name: 'The itinerary as published' }).waitFor();
  await desk.getByLabel('Itinerary', { exact: true }).fill(amended().source);
  await desk.getByRole('button', { name: 'Save as the draft of bulletin 1' }).click();
  await desk.getByRole('heading', { name: 'Bulletin 1 is a draft' }).waitFor();
  await desk.getByText('SS5 Long Rigg (I) is cancelled: 16.90 km of stage less.').waitFor();
  await desk.getByText('gains 12 min: 32 min instead of 20 min.', { exact: false }).waitFor();
  expect(await caller.bulletin.open(ids)).toBeNull();

  await desk.getByLabel('Note to the teams').fill('x'.repeat(501));
  await desk.getByRole('button', { name: 'Issue bulletin 1' }).click();
  await desk.getByText('The note is longer than 500 characters. Shorten it.').waitFor();
  await desk.getByLabel('Note to the teams').fill(NOTE);
  for (const size of SIZES) {
    await desk.setViewportSize(size);
    for (const colorScheme of SCHEMES) {
      await desk.emulateMedia({ colorScheme });
      await expectAccessible(desk, `bulletin-draft-${size.width}-${colorScheme}`);
    }
  }
  await desk.getByRole('button', { name: 'Issue bulletin 1' }).click();
  await desk.getByText('cannot be changed or taken back', { exact: false }).waitFor();
  await expectAccessible(desk, 'bulletin-issue-dialog');
  await desk.getByRole('button', { name: 'Issue it' }).click();
  await desk.getByRole('heading', { name: 'Bulletin 1', exact: true }).waitFor();
  await desk.getByText(NOTE).waitFor();
  await desk.getByText('bulletin 1 issued', { exact: true }).waitFor();
  await desk.getByRole('button', { name: 'Save as the draft of bulletin 2' }).waitFor();
  await expectAccessible(desk, 'bulletin-issued');

  const open = await caller.bulletin.open(ids);
  const [car] = open?.cars ?? [];
  expect(car?.jobs.length).toBeGreaterThan(0);
  const sentences = [...(open?.changes ?? []), ...(car?.changes ?? []), ...(car?.jobs ?? [])];
  const told = `It changes ${sentences.length} things for you.`;
  const query = `?${new URLSearchParams({ team: ids.teamId, event: ids.eventId, car: entryId, at: 'B' })}`;

  // A mechanic reads it from the bay, and is told whom to ask.
  const mechanic = await joinTeam(house, team, 'Ida Fell');
  const phone = (await openPage({ ...PHONE, baseUrl: house.url, cookie: mechanic.cookie })).page;
  await phone.goto(`/bay/${query}`);
  await phone.getByText(told, { exact: false }).waitFor();
  await expectAccessible(phone, 'bulletin-bay');
  await phone.getByRole('link', { name: 'Read bulletin 1' }).click();
  await phone.getByText('A manager accepts it for the team: Team Founder.').waitFor();
  for (const sentence of sentences) await phone.getByText(sentence, { exact: true }).first().waitFor();
  await phone.getByText(NOTE).waitFor();
  expect(await phone.getByRole('button', { name: 'Accept bulletin 1' }).count()).toBe(0);

  // The manager accepts it, the second time with a connection.
  const tolerated = [/ERR_INTERNET_DISCONNECTED/];
  const { page, context } = await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie, tolerated });
  const planned = async () => {
    const { itinerary } = await caller.event.get(ids);
    const out = itinerary.points.findIndex((point) => point.id === 'TC4B');
    return formatClock(dueAt(itinerary, out, 7), itinerary.timeZone);
  };
  expect(await planned()).toBe('11:59');
  await page.goto(`/service/${query}`);
  await page.getByRole('heading', { name: 'Service B · 20 min' }).waitFor();
  await page.goto(`/event/${query}`);
  await page.getByText(told, { exact: false }).waitFor();
  await expectAccessible(page, 'bulletin-event');
  await page.getByRole('link', { name: 'Read bulletin 1' }).click();
  await page.getByRole('button', { name: 'Accept bulletin 1' }).waitFor();
  for (const size of SIZES) {
    await page.setViewportSize(size);
    for (const colorScheme of SCHEMES) {
      await page.emulateMedia({ colorScheme });
      await expectAccessible(page, `bulletin-team-${size.width}-${colorScheme}`);
    }
  }
  await page.setViewportSize(PHONE);
  await page.emulateMedia({ colorScheme: 'light' });
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Accept bulletin 1' }).click();
  await page.getByText('The server cannot be reached.', { exact: false }).waitFor();
  expect(await planned()).toBe('11:59');
  await context.setOffline(false);
  await page.getByRole('button', { name: 'Accept bulletin 1' }).click();
  await page.getByText('It is version 2 of your itinerary now.', { exact: false }).waitFor();
  await expectAccessible(page, 'bulletin-accepted');
  expect(await planned()).toBe('12:11');

  await page.getByRole('link', { name: 'See the itinerary' }).click();
  await page.getByText('Version 2', { exact: true }).waitFor();
  expect(await page.getByLabel('Itinerary', { exact: true }).inputValue()).toBe(amended().source);
  await page.goto(`/event/${query}`);
  await page.getByText('Itinerary version 2').waitFor();
  expect(await page.getByText(told, { exact: false }).count()).toBe(0);
  for (const path of ['service', 'bay', 'event/sheet']) {
    await page.goto(`/${path}/${query}`);
    await page.getByText('12:11', { exact: false }).first().waitFor();
  }
});

it('warns a team that wrote its own version, and says when nothing waits', async () => {
  const { team, caller, ids, issue } = await publishAndTakeOver(house);
  const tolerated = [/409/];
  const { page } = await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie, tolerated });
  const query = `?${new URLSearchParams({ team: ids.teamId, event: ids.eventId })}`;
  await page.goto(`/event/bulletin/${query}`);
  await page.getByText('No bulletin waits').waitFor();

  await caller.event.saveItinerary({ ...ids, itinerary: { ...ITINERARY, startIntervalSeconds: 120 } });
  await issue(amended());
  await page.goto(`/event/bulletin/${query}`);
  await page.getByText('Version 2 of the itinerary is your own.', { exact: false }).waitFor();
  await page.getByText('cars start 1 min apart instead of 2 min', { exact: false }).first().waitFor();
  await expectAccessible(page, 'bulletin-own-version');

  // A newer one comes before the button is pressed: that one is to be read.
  await issue({ ...amended(), startIntervalSeconds: 90 });
  await page.getByRole('button', { name: 'Accept bulletin 1' }).click();
  await page.getByText('Bulletin 2 has come since. Read that one instead.').waitFor();
  await page.getByRole('button', { name: 'Accept bulletin 2' }).click();
  await page.getByText('It is version 3 of your itinerary now.', { exact: false }).waitFor();
});
