import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, ITINERARY, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size = PHONE, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  return (await openPage({ ...size, colorScheme, baseUrl: house.url, cookie })).page;
}

/** An event of its own, with a car that has the full starter set and has not run yet. */
async function foundFullCar(name: string): Promise<TeamAtEvent> {
  const team = await foundTeamAtEvent(house, name);
  const { caller, teamId } = team;
  const car = { drive: 'four', surface: 'gravel', starterCards: 'full' } as const;
  const { carId } = await caller.car.create({ teamId, name: `${name} full car`, ...car });
  const created = await caller.event.create({ teamId, name: `${name} first event`, itinerary: ITINERARY });
  if (!created.ok) throw new Error('The fixture itinerary has a problem.');
  const { eventId } = created;
  const place = { carNumber: '8', startPosition: 8, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  return { ...team, carId, eventId, entryId };
}

const QUESTION = 'Was car 8 prepared at home?';
const eventPage = ({ teamId, eventId }: TeamAtEvent) =>
  `/event/?${new URLSearchParams({ team: teamId, event: eventId })}`;
const servicePage = ({ teamId, eventId, entryId }: TeamAtEvent) =>
  `/service/?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: 'A' })}`;

it('takes what was done at home in one tap, and the first service then fits two people on one sheet', async () => {
  const team = await foundFullCar('Home');
  const page = await openAs(team.cookie);
  await page.goto(servicePage(team));
  await page.getByText(/It does not fit: \d+ are missing/).waitFor();
  await page.goto(eventPage(team));
  await page.getByText(QUESTION).waitFor();
  await expectAccessible(page, 'home-question-360');
  await page.getByRole('button', { name: 'All of it was done' }).click();
  await page.getByText(/Prepared at home: \d+ jobs done before the start, entered by Home Founder/).waitFor();
  expect(await page.getByText(QUESTION).count()).toBe(0);
  await expectAccessible(page, 'home-told-360');

  await page.goto(servicePage(team));
  await page.getByText('It fits only if nobody waits', { exact: false }).waitFor();
  await page.goto(`/log/?${new URLSearchParams({ team: team.teamId, event: team.eventId })}`);
  await page.getByText(/Home Founder recorded \d+ jobs done; before the start/).waitFor();
});

it('takes a part of it by keyboard, refuses none at all in words, and takes it back', async () => {
  const team = await foundFullCar('Part');
  const page = await openAs(team.cookie, DESK, 'dark');
  await page.goto(servicePage(team));
  await page.getByRole('button', { name: 'Part of it …' }).press('Enter');
  const dialog = page.getByRole('dialog', { name: 'Done before the start' });
  const boxes = dialog.getByRole('checkbox');
  const count = await boxes.count();
  await expectAccessible(page, 'home-part-1440-dark');
  for (const box of await boxes.all()) await box.press('Space');
  await dialog.getByRole('button', { name: 'These 0 jobs were done' }).click();
  await dialog.getByText('Choose what was done, or close this.').waitFor();
  await boxes.first().press('Space');
  await dialog.getByRole('button', { name: 'This job was done' }).click();
  await page.getByText('Prepared at home: 1 job done before the start', { exact: false }).waitFor();
  await page.getByRole('button', { name: 'Take back that car 8 was prepared at home' }).click();
  await page.getByText(QUESTION).waitFor();
  await page.getByText(new RegExp(`^${count} jobs \\(`)).waitFor();
});

it('shows what a form of the event page changed on the service page at once', async () => {
  const team = await foundFullCar('Fresh');
  const page = await openAs(team.cookie, DESK);
  await page.goto(eventPage(team));
  await page.getByRole('button', { name: 'Change car 8 at this event' }).click();
  await page.getByRole('dialog').getByLabel('People at service').fill('3');
  await page.getByRole('dialog').getByRole('button', { name: 'Save' }).click();
  await page.getByText('3 people at service').waitFor();
  await page.getByRole('link', { name: 'Sheet of Service A, car 8' }).click();
  await page.getByText('3 people have', { exact: false }).waitFor();
});
