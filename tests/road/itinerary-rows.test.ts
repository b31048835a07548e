import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LAPTOP = { width: 1440, height: 900 };

/** Invented. A column says nothing of the route, a line that is no point stands in it, and the second control of the service is missing. */
const WITH_GAPS = `TC/SS;Location;SS km;Road km;Target time;First car due;Weather
TC0;Start Ashcombe;;;;09:00
TC1;Ridge;;18.20;0:25;09:25
SS1;Ridge;11.40;;;09:28
XX;Photo point;;;;
TC1A;Service in;;17.10;0:34;10:02
TC2;Ridge;;18.20;0:25;10:47
SS2;Ridge;11.40;;;10:50
TC2A;Finish Ashcombe;;9.30;0:30;11:20
`;

const house = keepHouse({ pages: PAGES });

const nameOfFocused = (page: Page) =>
  page.evaluate(() => {
    const element = document.activeElement;
    const label = element instanceof HTMLInputElement ? element.labels?.[0]?.textContent : null;
    return element?.getAttribute('aria-label') ?? label ?? element?.textContent ?? '';
  });

/** What a screen reader was told, unseen. */
const told = (page: Page, words: string) =>
  page.getByRole('status').filter({ hasText: words }).waitFor({ state: 'attached' });

it('takes a row out, puts it back and puts one in by the keyboard, and keeps the remarks after saving', async () => {
  const { userId, cookie } = await house.signUp('Nell Ashby');
  const caller = house.callAs(userId);
  const { teamId } = await caller.team.create({ name: 'Ashcombe Rallying', personName: 'Nell Ashby' });
  const { page } = await openPage({ ...LAPTOP, baseUrl: house.url, cookie });
  await page.goto(`/event/new/?team=${teamId}`);
  await page.getByLabel('Name of the event').fill('Ashcombe Hills');
  await page.getByLabel('First day').fill('2026-06-13');
  await page.getByLabel('Time zone of the event').selectOption('Europe/London');
  const box = page.getByLabel('Itinerary', { exact: true });
  await box.fill(WITH_GAPS);
  const left = page.getByRole('status').filter({ hasText: 'left to mend' });
  await expect.poll(() => left.textContent()).toMatch(/^\d left to mend/);

  // From the first row down to the one that is no point, and out with it.
  await page.getByRole('button', { name: 'Change row 2, TC0 Start Ashcombe' }).focus();
  for (let step = 0; step < 3; step += 1) await page.keyboard.press('ArrowDown');
  expect(await nameOfFocused(page)).toBe('Change row 5, XX Photo point');
  await page.keyboard.press('Delete');
  await expect.poll(() => nameOfFocused(page)).toBe('Put the row back');
  await told(page, 'Row 5, XX Photo point, is taken out.');
  expect(await box.inputValue()).not.toContain('Photo point');
  await expectAccessible(page, 'rows-taken-out-laptop');
  await page.keyboard.press('Enter');
  await expect.poll(() => nameOfFocused(page)).toBe('Change row 5, XX Photo point');
  await told(page, 'Row 5, XX Photo point, is back.');
  await page.keyboard.press('Delete');
  await expect.poll(() => nameOfFocused(page)).toBe('Put the row back');

  // The missing control goes in below “Service in”; a slip in it is told in its own cell, and keeps the keyboard.
  await page.getByRole('button', { name: 'Change row 5, TC1A Service in' }).focus();
  await page.keyboard.press('Insert');
  await expect.poll(() => nameOfFocused(page)).toBe('TC/SS');
  await page.keyboard.press('Enter');
  await page.getByRole('alert').filter({ hasText: 'This is no row of the itinerary yet.' }).waitFor();
  await page.keyboard.type('TC1B');
  await page.keyboard.press('Tab');
  await page.keyboard.type('Service out');
  await page.getByRole('group', { name: 'New row below row 5' }).getByLabel('Target time').fill('0:2O');
  await expectAccessible(page, 'rows-new-laptop');
  await page.keyboard.press('Enter');
  await expect.poll(() => nameOfFocused(page)).toBe('Target time, row 6');
  await told(page, 'Row 6, TC1B Service out, is put in.');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('0:20');
  await page.keyboard.press('Enter');
  await page.getByRole('status').filter({ hasText: 'Nothing left to mend' }).waitFor();
  expect(await box.inputValue()).toContain('TC1B\tService out\t\t\t0:20');

  await page.getByRole('button', { name: 'Save the event' }).click();
  await page.waitForURL(/\/event\/\?/);
  await page.getByText('One thing to check in the itinerary').waitFor();
  await expectAccessible(page, 'remarks-kept-laptop');
  await page.getByRole('link', { name: 'Check the itinerary' }).click();
  await page.waitForURL(/\/event\/itinerary\/\?/);
  await page.getByText('· remark').first().waitFor();
});

it('writes rows anew, above and out again with a thumb', async () => {
  const { page } = await openPage({ ...PHONE, baseUrl: house.url });
  await page.goto('/try/');
  const box = page.getByLabel('Paste the itinerary');
  await box.fill(WITH_GAPS);
  const number = (name: string) => page.getByRole('button', { name: `Change row ${name}` });
  await number('5, XX Photo point').click();
  await expectAccessible(page, 'rows-tools-phone');
  await page.getByRole('button', { name: 'Write it anew' }).click();
  const fields = page.getByRole('group', { name: 'Row 5, XX Photo point, written anew' });
  expect(await fields.getByLabel('Location').inputValue()).toBe('Photo point');
  await fields.getByLabel('TC/SS').fill('RZ1');
  await fields.getByLabel('Location').fill('Refuel');
  await expectAccessible(page, 'rows-anew-phone');
  await fields.getByRole('button', { name: 'Write the row' }).click();
  await expect.poll(() => nameOfFocused(page)).toContain('row 5');
  expect(await box.inputValue()).toContain('RZ1\tRefuel');

  await number('6, TC1A Service in').click();
  await page.getByRole('button', { name: 'New row above' }).click();
  await page.keyboard.press('Escape');
  await expect.poll(() => nameOfFocused(page)).toBe('Change row 6, TC1A Service in');
  await number('6, TC1A Service in').click();
  await page.getByRole('button', { name: 'Take it out' }).click();
  await expect.poll(() => nameOfFocused(page)).toBe('Put the row back');
  expect(await box.inputValue()).not.toContain('TC1A');
});
