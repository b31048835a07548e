import { formatClock, servicesOf } from '@halfshaft/itinerary';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { openPage, runAxe, screenshot } from '../browser/chromium';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LAPTOP = { width: 1440, height: 900 };

/** Invented, as a reader copies it from a PDF: titles, a wrapped name, a page line; a letter O for 0 and an S for 5. */
const FROM_PDF = `            ASHCOMBE HILLS
        Itinerary, version 2

TC/SS   Location            SS km   Road km   Total km   Target   First car due
TC0     Start Ashcombe                                            09:00
TC1     Ridge                       18,20     18,20      0:25     09:25
SS1     Ridge               11,4O             11,40               09:28
TC2     Hollow                      14,80     26,20      0:34     10:02
        Wood
SS2     Hollow Wood         7,25              7,25                10:05
TC2A    Service in                  17,10     24,35      0:30     10:3S
TC2B    Service out                                      0:20     10:55
TC2C    Finish Ashcombe             9,30      9,30       0:15     11:10

Version of 1 May 2026                                      Page 1 of 1
`;

const house = keepHouse({ pages: PAGES });

/** A browser of a manager with a team and nothing else. */
async function openAsManager(size: { width: number; height: number }) {
  const { userId, cookie } = await house.signUp('Nell Ashby');
  const caller = house.callAs(userId);
  const { teamId } = await caller.team.create({ name: 'Ashcombe Rallying', personName: 'Nell Ashby' });
  const { page } = await openPage({ ...size, baseUrl: house.url, cookie });
  return { page, caller, teamId };
}

/** What the keyboard is on: its name, and the words it is described by. */
function focused(page: Page): Promise<{ name: string; described: string }> {
  return page.evaluate(() => {
    const element = document.activeElement;
    const ids = element?.getAttribute('aria-describedby')?.split(' ') ?? [];
    const described = ids
      .map((id) => document.getElementById(id)?.textContent ?? 'nobody has this id')
      .join(' ');
    return { name: element?.getAttribute('aria-label') ?? element?.textContent ?? '', described };
  });
}

/** Presses Tab until the keyboard is on this name; fails when it never comes there. */
async function tabTo(page: Page, name: string): Promise<void> {
  for (let presses = 0; presses < 25; presses += 1) {
    if ((await focused(page)).name === name) return;
    await page.keyboard.press('Tab');
  }
  expect(await focused(page)).toMatchObject({ name });
}

async function expectAccessible(page: Page, name: string): Promise<void> {
  await screenshot(page, name);
  expect(await runAxe(page)).toEqual([]);
  expect(await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)).toBe(0);
}

it('takes text from a PDF, whose two slips are mended in their cells by the keyboard alone', async () => {
  const { page, caller, teamId } = await openAsManager(LAPTOP);
  await page.goto(`/event/new/?team=${teamId}`);
  await page.getByLabel('Name of the event').fill('Ashcombe Hills');
  await page.getByLabel('First day').fill('2026-06-13');
  await page.getByLabel('Time zone of the event').selectOption('Europe/London');
  const box = page.getByLabel('Itinerary', { exact: true });
  await box.fill(FROM_PDF);
  const left = page.getByRole('status').filter({ hasText: 'left to mend' });
  await expect.poll(() => left.textContent()).toBe('2 left to mend, 1 remark.');
  expect(await page.getByRole('button', { name: /^Row/ }).allInnerTexts()).toEqual([
    expect.stringMatching(/Row 7, column 3, SS km.*“11,4O”/s),
    expect.stringMatching(/Row 11, column 7, First car due.*“10:3S”/s),
    expect.stringMatching(/Row 15 · remark.*names no control and no stage/s),
  ]);
  await expectAccessible(page, 'mend-laptop');

  await box.focus();
  await tabTo(page, 'SS km, row 7');
  expect((await focused(page)).described).toMatch(/Row 7, column 3, SS km.*“11,4O” cannot be read/);
  // What is still wrong keeps the keyboard.
  await page.keyboard.press('Control+A');
  await page.keyboard.type('11,4x');
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await focused(page)).described).toContain('“11,4x” cannot be read');
  expect(await left.textContent()).toBe('2 left to mend, 1 remark.');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('11,40');
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await focused(page)).described).toContain('“10:3S”');
  expect(await left.textContent()).toBe('1 left to mend, 1 remark.');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('10:35');
  await page.keyboard.press('Enter');
  await expect.poll(async () => (await focused(page)).name).toMatch(/^Nothing left to mend/);

  // What is saved is the text in the box, mended.
  const written = await box.inputValue();
  expect(written).toContain('SS1\tRidge\t11,40\t\t11,40');
  expect(written).toContain('TC2\tHollow Wood\t');
  await page.getByRole('button', { name: 'Save the event' }).focus();
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/event\/\?/);
  const eventId = new URL(page.url()).searchParams.get('event') ?? '';
  const event = await caller.event.get({ teamId, eventId });
  expect(event.itineraryText).toMatchObject({ source: written, printedFor: 'positionOne' });
  const metres = event.itinerary.points.map((point) => (point.kind === 'stage' ? point.stageMetres : 0));
  expect(metres.filter((one) => one > 0)).toEqual([11_400, 7250]);
  expect(servicesOf(event.itinerary)).toMatchObject([{ id: 'A', allowedSeconds: 1200 }]);
});

it('goes from cell to cell by Tab on a visitor’s phone, and can take it all back', async () => {
  const { page } = await openPage({ ...PHONE, baseUrl: house.url });
  await page.goto('/try/');
  const box = page.getByLabel('Paste the itinerary');
  await box.fill(FROM_PDF);
  const left = page.getByRole('status').filter({ hasText: 'left to mend' });
  await expect.poll(() => left.textContent()).toBe('2 left to mend, 1 remark.');
  await expectAccessible(page, 'mend-phone');
  await page.getByLabel('SS km, row 7').focus();
  await page.keyboard.press('Control+A');
  await page.keyboard.type('11,40');
  await page.keyboard.press('Tab');
  expect((await focused(page)).name).toMatch(/^First car due, row/);
  await expect.poll(() => left.textContent()).toBe('1 left to mend, 1 remark.');
  // The box that the keyboard is in has lived through the new reading.
  expect((await focused(page)).described).toContain('“10:3S”');
  await page.keyboard.press('Control+A');
  await page.keyboard.type('10:35');
  await page.keyboard.press('Tab');
  await expect.poll(() => left.textContent()).toBe('Nothing left to mend, 1 remark.');
  await page.getByText('Service A').first().waitFor();

  await page.getByRole('button', { name: 'Put the text back as it was pasted' }).click();
  await expect.poll(() => box.inputValue()).toBe(FROM_PDF);
  await expect.poll(() => left.textContent()).toBe('2 left to mend, 1 remark.');
});

it('makes an event of two days in loops, and says that its times are an estimate', async () => {
  const { page, caller, teamId } = await openAsManager(PHONE);
  await page.goto(`/event/new/?team=${teamId}`);
  await page.getByLabel('Name of the event').fill('Ashcombe Hills');
  await page.getByLabel('First day').fill('2026-06-13');
  await page.getByLabel('Time zone of the event').selectOption('Europe/London');
  await page.getByText('No itinerary yet?').click();
  await page.getByText(/The times are an estimate: 50 km\/h/).waitFor();
  const day = (number: number) => page.getByRole('group', { name: `Day ${number}` });
  const loop = (number: number) => day(1).getByRole('group', { name: `Loop ${number}` });
  expect(await day(1).locator('legend').first().textContent()).toBe('Day 1, Sat 13 Jun 2026');
  await page.getByLabel('First car out of the start').fill('08:30');
  await loop(1).getByLabel('Stages, km').fill('12,4 8.1');
  // A field that is wrong says so, and nothing is written.
  await page.getByRole('button', { name: 'Write the itinerary' }).click();
  await loop(1).getByText('Write the km of road in the loop, from 0 to 500.').waitFor();
  expect(await page.getByLabel('Itinerary', { exact: true }).inputValue()).toBe('');
  await loop(1).getByLabel('Road of the whole loop').fill('60');
  await page.getByRole('button', { name: 'Repeat loop 1' }).click();
  await page.getByRole('button', { name: 'Another loop' }).click();
  await page.getByRole('button', { name: 'Remove loop 3' }).click();
  await loop(2).getByLabel('At its end').selectOption('Remote service');
  await loop(2).getByLabel('Time for it').fill('15');
  await loop(2).getByText('More:').click();
  await loop(2).getByLabel('Refuel before its first stage').check();
  expect(
    await loop(2)
      .getByLabel(/driven again/)
      .isChecked(),
  ).toBe(true);
  // The second day is the first once more, less its second loop, with a service before it.
  await page.getByRole('button', { name: 'Copy day 1' }).click();
  expect(await day(2).locator('legend').first().textContent()).toBe('Day 2, Sun 14 Jun 2026');
  await page.getByRole('button', { name: 'Remove loop 2' }).last().click();
  await day(2).getByLabel('First car out of parc fermé').fill('07:00');
  await day(2).getByText('More: date').click();
  await day(2).getByLabel('Service before the first stage').fill('15');
  await expectAccessible(page, 'quick-form-phone');
  await page.getByRole('button', { name: 'Write the itinerary' }).click();
  await page.getByRole('status').filter({ hasText: 'Nothing left to mend' }).waitFor();
  await page.getByRole('button', { name: 'Save the event' }).click();
  await page.waitForURL(/\/event\/\?/);
  const eventId = new URL(page.url()).searchParams.get('event') ?? '';
  const { itinerary } = await caller.event.get({ teamId, eventId });
  const metres = itinerary.points.map((point) => (point.kind === 'stage' ? point.stageMetres : 0));
  expect(metres.filter((one) => one > 0)).toEqual([12_400, 8100, 12_400, 8100, 12_400, 8100]);
  expect(servicesOf(itinerary).map((service) => [service.kind, service.allowedSeconds / 60])).toEqual([
    ['service', 30],
    ['remoteService', 15],
    ['service', 15],
    ['service', 30],
  ]);
  expect(itinerary.points.map((point) => point.id)).toContain('RZ1');
  const morning = itinerary.points.find((point) => point.leg === 2);
  expect(morning?.name).toBe('Parc fermé out / Service in');
  expect(formatClock(morning?.firstCarAt ?? 0, itinerary.timeZone)).toBe('07:00');
  expect(formatClock(itinerary.points[0]?.firstCarAt ?? 0, itinerary.timeZone)).toBe('08:30');
});

it('plans a service from loops without an account', async () => {
  const { page } = await openPage({ ...PHONE, baseUrl: house.url });
  await page.goto('/try/');
  await page.getByText('No itinerary yet?').click();
  await page.getByLabel('First day of the event').fill('2026-07-04');
  await page.getByLabel('Stages, km').fill('10 10');
  await page.getByLabel('Road of the whole loop').fill('40');
  await page.keyboard.press('Enter');
  await page.getByText('Service A').first().waitFor();
  expect(await page.getByLabel('Paste the itinerary').inputValue()).toContain('SS2\t');
  await page.getByText(/More: start position/).click();
  expect(await page.getByLabel('First day', { exact: true }).inputValue()).toBe('2026-07-04');
});

it('shows the times of a visitor’s own car, also where it starts again after a regroup', async () => {
  const { page } = await openPage({ ...PHONE, baseUrl: house.url });
  await page.goto('/try/');
  await page.getByRole('button', { name: 'Use an example' }).click();
  const paper = page.getByRole('article', { name: 'The sheet for Service A' });
  await paper.getByText('start position 1', { exact: false }).waitFor();
  expect(await paper.getByText(/^10:52$/).count()).toBe(1);
  await page.getByText(/More: start position/).click();
  await page.getByLabel('Start position of your car').fill('12');
  await paper.getByText(/^11:03$/).waitFor();
  const again = page.getByLabel(/^Starts again in Section 2 in position/);
  await again.fill('4x');
  await page.getByText('The start position must be a whole number from 1 to 300.').first().waitFor();
  await again.fill('4');
  await paper.getByText(/^10:55$/).waitFor();
  await paper.getByText('start position 4', { exact: false }).waitFor();
  await expectAccessible(page, 'try-positions-phone');
});
