import { resolve } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { openPage, runAxe, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, makeAction, taskRef } from '../support/event';
import { type House, openHouse } from '../support/house';

const OUT = resolve(import.meta.dirname, '../../apps/web/out');
const PHONE = { width: 360, height: 740 };
const LOOK = 'After a hard landing: look';

let house: House;
beforeAll(async () => {
  house = await openHouse({ pages: { kind: 'build', folder: OUT } });
});
afterAll(() => house.close());

/** A second car of the team, with the whole starter set. */
async function enterFullCar() {
  const team = await foundTeamAtEvent(house);
  const { caller, teamId, eventId } = team;
  const car = { name: 'Second car', drive: 'front', surface: 'gravel', starterCards: 'full' } as const;
  const { carId } = await caller.car.create({ teamId, ...car });
  const place = { carNumber: '8', startPosition: 8, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  const card = (await caller.card.list({ teamId, carId })).find(({ name }) => name === LOOK);
  if (!card) throw new Error(`The starter set has no card "${LOOK}".`);
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  return { ...team, entryId, cardId: card.id, at };
}

async function openAs(cookie: string): Promise<Page> {
  const { context, page } = await openPage({ ...PHONE, baseUrl: house.url });
  const pairs = cookie.split('; ').filter(Boolean);
  await context.addCookies(
    pairs.map((pair) => {
      const [name = '', ...value] = pair.split('=');
      return { name, value: value.join('='), url: house.url };
    }),
  );
  return page;
}

async function expectAccessible(page: Page, name: string) {
  await screenshot(page, name);
  expect(await runAxe(page), name).toEqual([]);
  const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
  expect(overflow, `${name}: wider than the screen by`).toBeLessThanOrEqual(0);
}

const sheetCalled = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true, level: 2 }) });

it('follows a hard landing to its look, its temporary repair and the lasting one', async () => {
  const { caller, teamId, eventId, personId, entryId, cardId, cookie, at } = await enterFullCar();
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');

  // What, where, done.
  await page.goto(`/bay/${at('A')}`);
  await sheetCalled(page, 'Do now').getByText(LOOK).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Something happened on the road' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Choose what happened.').waitFor();
  await dialog.getByText('Hard landing', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Front left' }).click();
  await expectAccessible(page, 'happened-dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();

  // Its card is due here, with the reason, and the way back is offered.
  const doNow = sheetCalled(page, 'Do now');
  await doNow.getByText(LOOK).waitFor();
  await doNow.getByText('hard landing on SS', { exact: false }).first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await doNow.getByText(LOOK).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Something happened on the road' }).click();
  await dialog.getByText('Hard landing', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Front left' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await doNow.getByText(LOOK).waitFor();
  await expectAccessible(page, 'happened-bay');

  // On the sheet too, and while nobody has looked, the crew is asked to.
  await page.goto(`/service/${at('A')}`);
  await sheetCalled(page, 'Do now').getByText('Hard landing on SS', { exact: false }).first().waitFor();
  const crew = sheetCalled(page, 'For the crew, at the first halt');
  await crew.getByText(LOOK).waitFor();
  await expectAccessible(page, 'happened-service');

  // Closed with a temporary repair: off the crew's list, and due again at the next service.
  const wire = {
    lookId: null,
    position: null,
    grade: 'temporaryRepair',
    words: 'strap on the guard',
  } as const;
  const close = makeAction(
    { kind: 'closeTask', args: { task: taskRef(entryId, cardId, 'A'), findings: [wire], readings: [] } },
    personId,
  );
  await caller.work.push({ teamId, eventId, actions: [close] });
  await crew.getByText(LOOK).waitFor({ state: 'detached' });
  await page.goto(`/bay/${at('B')}`);
  await sheetCalled(page, 'Do now')
    .getByText('temporary repair at Service A: strap on the guard', { exact: false })
    .waitFor();
  const repairs = sheetCalled(page, 'Temporary repairs');
  await repairs.getByText('made at Service A · strap on the guard').waitFor();
  await expectAccessible(page, 'happened-repair');

  // Made good: gone from both.
  await repairs.getByRole('button', { name: 'Made good' }).click();
  await repairs.waitFor({ state: 'detached' });
  await sheetCalled(page, 'Do now').getByText(LOOK).waitFor({ state: 'detached' });

  await page.goto(`/log/${at('B')}`);
  const log = page.getByRole('main');
  await log
    .getByText('recorded hard landing (Front left); on the road after SS', { exact: false })
    .first()
    .waitFor();
  await log.getByText('(temporary repair at Service A) is made good', { exact: false }).waitFor();
});
