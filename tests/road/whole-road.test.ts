import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage } from '../browser/chromium';
import { PASSWORD } from '../support/house';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LAPTOP = { width: 1440, height: 900 };

/** Three mistakes: a letter in the kilometres, a time that is none, a service without its out control. */
const WITH_MISTAKES = `TC/SS;Location;SS km;Road km;Total km;Target time;First car due
TC0;Start Ashcombe;;;;;09:00
TC1;Ridge;;18.2;18.2;0:25;09:25
SS1;Ridge (I);11.x;;11.4;;09:28
TC1A;Service in;;14.8;26.2;0:34;10:62
TC2;Hollow;;17.1;17.1;0:28;10:50
SS2;Hollow;7.25;;7.25;;10:53
TC2A;Finish Ashcombe;;9.3;16.55;0:25;11:18
`;
const MENDED = WITH_MISTAKES.replace('11.x', '11.4')
  .replace('10:62', '10:02')
  .replace('TC2;', 'TC1B;Service out;;;;0:20;10:22\nTC2;');

const house = keepHouse({ pages: PAGES });

function taskCard(page: Page, name: string): Locator {
  return page.getByRole('listitem').filter({ has: page.getByRole('heading', { name }) });
}

it('leads from a visitor’s two minutes to a signed service in everybody’s log', async () => {
  const laptop = await openPage({ ...LAPTOP, baseUrl: house.url });
  const manager = laptop.page;

  // The visitor pastes an itinerary with three mistakes, is told each with its place, and mends them.
  await manager.goto('/try/');
  await manager.getByRole('radio', { name: 'Front' }).check();
  await manager.getByRole('radio', { name: 'Gravel' }).check();
  await manager.getByLabel('Paste the itinerary').fill(WITH_MISTAKES);
  const problems = manager.getByRole('button', { name: /^Row/ });
  await expect.poll(() => problems.count()).toBe(3);
  expect(await problems.allInnerTexts()).toEqual([
    expect.stringMatching(/Row 4.*SS km/s),
    expect.stringMatching(/Row 5, column 2.*no control leaves it. Add the row “service out”/s),
    expect.stringMatching(/Row 5, column 7.*“10:62” cannot be read as First car due. Write the time of day/s),
  ]);
  await problems.first().click();
  const selected = await manager
    .getByLabel('Paste the itinerary')
    .evaluate((box: HTMLTextAreaElement) => box.value.slice(box.selectionStart, box.selectionEnd));
  expect(selected).toContain('SS1;Ridge (I)');
  await manager.getByLabel('Paste the itinerary').fill(MENDED);
  await manager.getByText('Service A').first().waitFor();
  await manager
    .getByText(/person-minutes/)
    .first()
    .waitFor();

  // What was typed is there after a reload.
  await expect
    .poll(() =>
      manager.evaluate(() => Object.values(localStorage).some((value) => value.includes('Ashcombe'))),
    )
    .toBe(true);
  await manager.reload();
  await expect.poll(() => manager.getByLabel('Paste the itinerary').inputValue()).toBe(MENDED);

  // Signing up keeps it.
  await manager.getByRole('link', { name: 'Keep this: make an account' }).click();
  await manager.getByLabel('Your name').fill('Nell Ashby');
  await manager.getByLabel('E-mail').fill('nell@ashcombe.example');
  await manager.getByLabel('Password').fill(PASSWORD);
  await manager.getByRole('button', { name: /account/i }).click();
  await manager.getByLabel('Name of the team').fill('Ashcombe Rallying');
  await manager.getByLabel('Name of the event').fill('Ashcombe Hills');
  await manager.locator('form').getByRole('button').last().click();
  await manager.waitForURL(/\/event\/\?/);
  await manager.getByRole('heading', { name: 'Ashcombe Hills' }).waitFor();
  const ids = new URL(manager.url()).searchParams;

  // A second person joins by the link, with a name only.
  await manager.goto(`/people/?team=${ids.get('team')}`);
  await manager.getByRole('radio', { name: /Mechanic/ }).check();
  await manager.getByLabel('For', { exact: true }).selectOption({ label: 'The whole team' });
  await manager.getByRole('button', { name: 'Make the link' }).click();
  const link = await manager.getByLabel('Link', { exact: true }).inputValue();
  const phone = await openPage({ ...PHONE, baseUrl: house.url });
  const mechanic = phone.page;
  await mechanic.goto(new URL(link).pathname + new URL(link).hash);
  await mechanic.getByText('Ashcombe Rallying').first().waitFor();
  await mechanic.getByLabel('Your name').fill('Owen Pike');
  await mechanic.getByRole('button', { name: 'Join' }).click();
  await mechanic.waitForURL(/\/(home|event)\//);

  // Both are in the bay of Service A.
  await manager.goto(`/event/?team=${ids.get('team')}&event=${ids.get('event')}`);
  await manager.getByRole('link', { name: 'Bay' }).first().click();
  await manager.waitForURL(/\/bay\/\?/);
  const bay = new URL(manager.url());
  await mechanic.goto(bay.pathname + bay.search);

  // Both take the same round at the same moment, each before hearing of the other: one has it, the other is told who.
  const round = 'Front corners';
  await taskCard(manager, round).getByRole('button', { name: "I've got it" }).waitFor();
  await taskCard(mechanic, round).getByRole('button', { name: "I've got it" }).waitFor();
  const holdBack = await holdPushes(laptop.context);
  const holdBackToo = await holdPushes(phone.context);
  await taskCard(manager, round).getByRole('button', { name: "I've got it" }).click();
  await taskCard(mechanic, round).getByRole('button', { name: "I've got it" }).click();
  await holdBackToo.release();
  await taskCard(manager, round).getByText('Owen Pike').waitFor();
  await holdBack.release();
  await manager.getByText(/Owen Pike has it already/).waitFor();

  // The round is closed with one exception and a reading; the manager sees it arrive without reloading.
  const loads = countLoads(manager);
  await taskCard(mechanic, round).getByRole('button', { name: "Something's wrong" }).click();
  const dialog = mechanic.getByRole('dialog');
  await dialog.getByRole('radio').first().check();
  await dialog.getByRole('radio', { name: 'FL' }).check();
  await dialog.getByRole('radio', { name: 'keep an eye' }).check();
  await dialog.getByLabel('In a few words').fill('Cut in the shoulder');
  await dialog
    .getByRole('button', { name: /Note it|Add|Keep/ })
    .first()
    .click();
  await dialog.getByLabel('Tread FL').fill('6.2');
  await dialog.getByRole('button', { name: 'Done' }).click();
  await taskCard(manager, round)
    .getByText(/Cut in the shoulder/)
    .waitFor();
  await taskCard(manager, round).getByText(/6\.2/).waitFor();

  // Wheel nuts: closed by the mechanic with the torque measured, signed by another person.
  const nuts = taskCard(mechanic, 'Wheel nuts');
  await nuts.getByRole('button', { name: 'Readings' }).click();
  await mechanic.getByRole('dialog').getByLabel('Torque').first().fill('110');
  await mechanic.getByRole('dialog').getByRole('button', { name: 'Done' }).click();
  expect(await nuts.getByRole('button', { name: 'Sign: I checked it' }).count()).toBe(0);
  await taskCard(manager, 'Wheel nuts').getByRole('button', { name: 'Sign: I checked it' }).click();
  await nuts.getByText(/Nell Ashby/).waitFor();
  expect(loads()).toBe(0);

  // The log shows it all.
  await manager.goto(`/log/?team=${ids.get('team')}&event=${ids.get('event')}`);
  const log = manager.getByRole('main');
  await log
    .getByText(/Nell Ashby signed.*Wheel nuts/)
    .first()
    .waitFor();
  await log
    .getByText(/Owen Pike closed.*Front corners/)
    .first()
    .waitFor();
  await log
    .getByText(/Cut in the shoulder/)
    .first()
    .waitFor();
  expect(await log.getByText(/Nell Ashby (took|has got).*Front corners/).count()).toBe(0);
});

/** Pushes of this browser wait until they are released, so that two people act before either is answered. */
async function holdPushes(context: import('playwright-core').BrowserContext) {
  let open: () => void = () => {};
  const gate = new Promise<void>((done) => {
    open = done;
  });
  const pattern = /\/trpc\/.*work\.push/;
  await context.route(pattern, async (route) => {
    await gate;
    await route.continue();
  });
  return {
    async release() {
      open();
    },
  };
}

/** How often the page was loaded anew since. */
function countLoads(page: Page): () => number {
  let count = 0;
  page.on('load', () => {
    count += 1;
  });
  return () => count;
}
