import { randomUUID } from 'node:crypto';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, ITINERARY, makeAction } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const CHANGE = 'Front brake pads: change';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size = PHONE, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  return (await openPage({ ...size, colorScheme, baseUrl: house.url, cookie })).page;
}

const sheetCalled = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true, level: 2 }) });
const jobCalled = (page: Page, title: string) =>
  page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: title, exact: true }) });

/** Opens the readings of a round or job, types them in and closes it. */
async function measure(page: Page, title: string, values: Record<string, string>): Promise<void> {
  await jobCalled(page, title).getByRole('button', { name: 'Readings' }).click();
  const dialog = page.getByRole('dialog');
  for (const [label, value] of Object.entries(values))
    await dialog.getByLabel(label, { exact: true }).fill(value);
  await dialog.getByRole('button', { name: 'Done' }).click();
  await dialog.waitFor({ state: 'detached' });
}

it('measures pads by position, and says at the next service that they must be changed, and why', async () => {
  const { teamId, eventId, entryId, cookie } = await foundTeamAtEvent(house, 'Pads');
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');

  await page.goto(`/event/readings/${at('A')}`);
  await page.getByText('Nothing was read yet').waitFor();
  await expectAccessible(page, 'readings-empty');

  // Service A: two values of the front corners. One reading says nothing yet of how fast they wear.
  await page.goto(`/bay/${at('A')}`);
  await measure(page, 'Round: Front corners', {
    'Pad thickness FL, mm': '9.0',
    'Pad thickness FR, mm': '9,0',
  });
  await page.goto(`/service/${at('A')}`);
  await sheetCalled(page, 'Leave').getByText('cards can wait', { exact: false }).click();
  await sheetCalled(page, 'Leave')
    .getByText('Pad thickness FL: 9.0 mm now, limit 3.0: not known yet how fast it wears.')
    .waitFor();

  // Service B: what was read last stands beside the box.
  await page.goto(`/bay/${at('B')}`);
  expect(await sheetCalled(page, 'Do now').getByRole('heading', { name: CHANGE }).count()).toBe(0);
  await jobCalled(page, 'Round: Front corners').getByRole('button', { name: 'Readings' }).click();
  await dialog.getByText('last 9.0 at Service A', { exact: false }).first().waitFor();
  await expectAccessible(page, 'readings-last-beside-box');
  await dialog.getByRole('button', { name: 'Not yet' }).click();
  await measure(page, 'Round: Front corners', {
    'Pad thickness FL, mm': '5.0',
    'Pad thickness FR, mm': '8.5',
  });

  // At once: the job that changes them is due, the worst place first, with what is expected.
  const due = jobCalled(page, CHANGE);
  const reason = /Pad thickness FL: 5\.0 mm now, 0\.0 expected at Service [A-Z], limit 3\.0: won't last/;
  await sheetCalled(page, 'Do now').getByText(reason).waitFor();
  await expectAccessible(page, 'readings-bay');
  await page.goto(`/service/${at('B')}`);
  await sheetCalled(page, 'Do now').getByText(reason).waitFor();
  await expectAccessible(page, 'readings-service');

  // On paper, beside the place to write.
  await page.goto(`/event/sheet/${at('B')}`);
  await page.getByText('last 5.0', { exact: false }).first().waitFor();
  await screenshot(page, 'readings-paper');

  // Changed: it stays in its place as done, and the next service starts anew with the new value.
  await page.goto(`/bay/${at('B')}`);
  await measure(page, CHANGE, { 'New pad thickness FL, mm': '11.0', 'New pad thickness FR, mm': '11.0' });
  await due.getByText('Done by', { exact: false }).first().waitFor();
  await page.goto(`/event/readings/${at('B')}`);
  await page.getByText('9.0', { exact: true }).first().waitFor();
  await page.getByText('5.0, then 11.0 (new part)').waitFor();
  await page.getByText('first reading of the new part').first().waitFor();
  await expectAccessible(page, 'readings-page-360');
  const night = await openAs(cookie, DESK, 'dark');
  await night.goto(`/event/readings/${at('B')}`);
  await night.getByText('5.0, then 11.0 (new part)').waitFor();
  await expectAccessible(night, 'readings-page-1440-dark');
});

it('lets a card have no limit, and says so in the list, the form and the table', async () => {
  const { teamId, carId, cookie, caller } = await foundTeamAtEvent(house, 'Limitless');
  const page = await openAs(cookie);
  await page.goto(`/car/?${new URLSearchParams({ team: teamId, car: carId })}`);
  await page.getByRole('link', { name: CHANGE }).click();
  await page.getByRole('button', { name: 'No limit' }).click();
  await page
    .getByText('No limit: only what happens, a reading, a date or one of you calls for this card.')
    .waitFor();
  await expectAccessible(page, 'readings-card-without-limit');
  await page.getByRole('button', { name: 'Save the card' }).click();
  await page.getByText('no limit: on request only').waitFor();
  const cards = await caller.card.list({ teamId, carId });
  expect(cards.find(({ name }) => name === CHANGE)?.intervals).toEqual([]);
});

it('takes a part that was changed on the road as new to the next event', async () => {
  const team = await foundTeamAtEvent(house, 'Carried');
  const { caller, teamId, eventId, entryId, carId, personId } = team;
  const cards = await caller.card.list({ teamId, carId });
  const idOf = (name: string) => cards.find((card) => card.name === name)?.id ?? '';
  const { itinerary } = await caller.event.get({ teamId, eventId });
  const stages = itinerary.points.flatMap((point) => (point.kind === 'stage' ? [point] : []));
  const last = stages.at(-1);
  if (!last) throw new Error('The fixture itinerary has no stage.');
  const fact = { kind: 'fitted' as const, cardId: idOf(CHANGE), position: null, words: '' };
  const at = { kind: 'road' as const, afterStageId: last.id };
  const args = { factId: randomUUID(), entryId, at, fact };
  await caller.work.push({ teamId, eventId, actions: [makeAction({ kind: 'recordFact', args }, personId)] });

  const later = { ...ITINERARY, startsOn: '2026-07-11' };
  const created = await caller.event.create({ teamId, name: 'Later event', itinerary: later });
  if (!created.ok) throw new Error('The fixture itinerary has a problem.');
  const entry = { carNumber: '7', startPosition: 7, people: 2 };
  await caller.event.enter({ teamId, eventId: created.eventId, carId, ...entry });
  const { entries } = await caller.event.get({ teamId, eventId: created.eventId });
  const carried = entries[0]?.carried ?? {};
  // New behind the last stage: no stage kilometre on it. The air filter has them all.
  expect(carried[idOf(CHANGE)]?.stageMetres ?? 0).toBe(0);
  const metres = stages.reduce((sum, stage) => sum + stage.stageMetres, 0);
  expect(carried[idOf('Air filter: clean or change')]?.stageMetres).toBe(metres);
});
