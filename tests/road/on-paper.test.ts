import { randomUUID } from 'node:crypto';
import { resolve } from 'node:path';
import type { ActionBody } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import {
  foundTeamAtEvent,
  ITINERARY,
  joinTeam,
  makeAction,
  type TeamAtEvent,
  taskRef,
} from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES } from '../support/screens';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size = DESK) {
  return (await openPage({ ...size, baseUrl: house.url, cookie })).page;
}

const queryOf = ({ teamId, eventId, entryId }: TeamAtEvent, at: string) =>
  `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at })}`;

/** Page objects of a PDF: Chromium writes their dictionaries uncompressed. */
const pagesOf = (pdf: Buffer) => pdf.toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length ?? 0;

it('prints a twenty-minute service by person on one page of A4', async () => {
  const team = await foundTeamAtEvent(house, 'Paper');
  await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(team.cookie);
  for (const at of ['A', 'B']) {
    await page.goto(`/event/sheet/${queryOf(team, at)}`);
    const paper = page.getByRole('article', { name: new RegExp(`Service.${at}`) });
    await paper.getByRole('heading', { name: /Ida Fell/ }).waitFor();
    await paper.getByText('second signature, by another person').first().waitFor();
    const path = resolve(import.meta.dirname, `../screenshots/sheet-${at}.pdf`);
    const pdf = await page.pdf({ path, preferCSSPageSize: true, printBackground: true });
    expect(pagesOf(pdf), `pages of the sheet of Service ${at}`).toBe(1);
  }
  await page.emulateMedia({ media: 'print' });
  await page.setViewportSize({ width: 703, height: 1032 });
  await screenshot(page, 'sheet-print');
});

it('prints the full set of a car prepared at home for its first twenty-minute service', async () => {
  const team = await foundTeamAtEvent(house, 'Full');
  await joinTeam(house, team, 'Ida Fell');
  const { caller, teamId, eventId } = team;
  const car = {
    name: 'Full car',
    drive: 'four' as const,
    surface: 'gravel' as const,
    starterCards: 'full' as const,
  };
  const { carId } = await caller.car.create({ teamId, ...car });
  const place = { carNumber: '8', startPosition: 8, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  const cards = await caller.card.list({ teamId, carId });
  const fact = { kind: 'prepared' as const, cardIds: cards.map(({ id }) => id) };
  const args = { factId: randomUUID(), entryId, at: { kind: 'road' as const, afterStageId: null }, fact };
  await caller.work.push({
    teamId,
    eventId,
    actions: [makeAction({ kind: 'recordFact', args }, team.personId)],
  });
  const page = await openAs(team.cookie);
  for (const at of ['A', 'B']) {
    await page.goto(`/event/sheet/${queryOf({ ...team, entryId }, at)}`);
    const paper = page.getByRole('article', { name: new RegExp(`Service.${at}`) });
    await paper.getByRole('heading', { name: /Ida Fell/ }).waitFor();
    const path = resolve(import.meta.dirname, `../screenshots/sheet-full-${at}.pdf`);
    const pdf = await page.pdf({ path, preferCSSPageSize: true, printBackground: true });
    expect(pagesOf(pdf), `pages of the full sheet of Service ${at}`).toBe(1);
  }
});

it('plans the same on a phone without the server, and keeps the columns that were printed for recording', async () => {
  const team = await foundTeamAtEvent(house, 'Alike');
  await joinTeam(house, team, 'Ida Fell');
  const textOf = async (cutOff: boolean) => {
    const cut = cutOff ? { expected: [/Failed to load resource.*bayPlan.propose/] } : {};
    const { page } = await openPage({ ...DESK, baseUrl: house.url, cookie: team.cookie, ...cut });
    if (cutOff) await page.route('**/trpc/bayPlan.propose**', (route) => route.abort());
    await page.goto(`/event/sheet/${queryOf(team, 'B')}`);
    const paper = page.getByRole('article', { name: /Service.B/ });
    await paper.getByText('By this plan all is done at').waitFor();
    return { page, text: await paper.textContent() };
  };
  const served = await textOf(false);
  const alone = await textOf(true);
  expect(alone.text).toBe(served.text);
  expect(alone.text).toContain('Wheels on, car down');
  await screenshot(served.page, 'sheet-planned');
  await served.page.setViewportSize({ width: 360, height: 740 });
  await expectAccessible(served.page, 'sheet-planned-phone');

  const { page } = alone;
  await page.evaluate(() => window.dispatchEvent(new Event('beforeprint')));
  await page.goto(`/event/sheet/record/${queryOf(team, 'B')}`);
  await page.getByText('rows as printed on this device').waitFor();
});

it('says why no plan works out, and shares out by minutes', async () => {
  const team = await foundTeamAtEvent(house, 'Alone');
  await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(team.cookie, { width: 360, height: 740 });
  await page.goto(`/event/sheet/${queryOf(team, 'A')}`);
  await page.getByText('By this plan all is done at', { exact: false }).waitFor();
  await page.getByRole('checkbox', { name: 'Ida Fell' }).uncheck();
  const alert = page.getByRole('alert').filter({ hasText: 'No plan works out' });
  await alert.getByText('Wheel nuts: torque needs 2 people, and only 1 is there.').waitFor();
  await page.getByText('settle among yourselves who waits for whom', { exact: false }).waitFor();
  await expectAccessible(page, 'sheet-no-plan');
});

it('takes a filled sheet for named people, with a second signature in ink, and loses nothing on a reload', async () => {
  const team = await foundTeamAtEvent(house, 'Ink');
  await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(team.cookie);
  await page.goto(`/event/sheet/record/${queryOf(team, 'A')}`);
  const nuts = page.getByRole('region', { name: /Wheel nuts/ });
  await nuts.getByLabel('Done', { exact: true }).check();
  const initials = nuts.getByLabel('Initials of');
  await initials.selectOption({ label: 'Ida Fell (IF)' });
  const signature = nuts.getByLabel('Second signature in ink');
  await signature.selectOption({ label: 'Ida Fell (IF)' });
  await page.getByRole('button', { name: 'Record all (1)' }).click();
  await nuts.getByText('must be by somebody who did not do the work', { exact: false }).waitFor();
  await expectAccessible(page, 'sheet-record');
  await page.reload();
  await signature.selectOption({ label: 'Ink Founder (IF)' });
  expect(await initials.locator('option:checked').textContent()).toMatch(/^Ida Fell/);

  // Readings by keyboard: Enter goes on to the next box.
  await nuts.getByLabel('Torque FL', { exact: false }).fill('110');
  for (const value of ['111', '112', '113']) {
    await page.keyboard.press('Enter');
    await page.keyboard.type(value);
  }
  await page.getByRole('button', { name: 'Record all (1)' }).click();
  await page.getByText('1 row is in the log.', { exact: false }).waitFor();
  await page.getByText('In the log: done by Ida Fell, signed by you.').waitFor();

  await page.getByRole('link', { name: 'To the log' }).click();
  await page.getByText(/Ida Fell closed 'Wheel nuts.*entered by Ink Founder/).waitFor();
  await page.getByText(/Ink Founder signed 'Wheel nuts.*in ink on the printed sheet/).waitFor();
  const { teamId, eventId } = team;
  const { entries } = await team.caller.work.pull({ teamId, eventId, since: 0 });
  const done = entries.find(({ body }) => body.kind === 'done')?.body;
  expect(done?.kind === 'done' && done.readings.map(({ value }) => value)).toEqual([110, 111, 112, 113]);
});

it('takes a signature in ink of somebody without a phone, and says who typed it', async () => {
  const team = await foundTeamAtEvent(house, 'Scribe');
  const mechanic = await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(mechanic.cookie, { width: 360, height: 740 });
  await page.goto(`/event/sheet/record/${queryOf(team, 'A')}`);
  const nuts = page.getByRole('region', { name: /Wheel nuts/ });
  await nuts.getByLabel('Done', { exact: true }).check();
  await nuts.getByLabel('Initials of').selectOption(mechanic.personId);
  await nuts.getByLabel('Second signature in ink').selectOption(team.personId);
  await expectAccessible(page, 'sheet-record-phone');
  await page.getByRole('button', { name: 'Record all (1)' }).click();
  await page.getByRole('link', { name: 'To the log' }).click();
  const signed = page.getByRole('listitem').filter({ hasText: 'in ink on the printed sheet' });
  await signed.getByText(/Scribe Founder signed 'Wheel nuts/).waitFor();
  await signed.getByText('entered by Ida Fell').waitFor();
});

it('takes what is open along to the next event of the car, once', async () => {
  const team = await foundTeamAtEvent(house, 'End');
  const { caller, teamId, eventId, entryId, carId, personId, cardIds } = team;
  const [cardId = ''] = cardIds;
  const finding = {
    lookId: null,
    position: 'FL',
    grade: 'temporaryRepair' as const,
    words: 'tied with wire',
  };
  const close: ActionBody = {
    kind: 'closeTask',
    args: { task: taskRef(entryId, cardId), findings: [finding], readings: [] },
  };
  await caller.work.push({ teamId, eventId, actions: [makeAction(close, personId)] });
  const itinerary = { ...ITINERARY, startsOn: '2026-09-12' };
  const next = await caller.event.create({ teamId, name: 'Next stages', itinerary });
  if (!next.ok) throw new Error('The itinerary of the next event has a problem.');
  await caller.event.enter({
    teamId,
    eventId: next.eventId,
    carId,
    carNumber: '9',
    startPosition: 9,
    people: 2,
  });
  const page = await openAs(team.cookie);
  await page.goto(`/event/end/?${new URLSearchParams({ team: teamId, event: eventId })}`);
  await page.getByText('tied with wire', { exact: false }).first().waitFor();
  await expectAccessible(page, 'event-end');
  await page.getByRole('button', { name: 'Raise 1 snag at Next stages' }).click();
  await page.getByText('Everything open is on the list of Next stages.').waitFor();
  await page.reload();
  await page.getByText('Everything open is on the list of Next stages.').waitFor();
  await expect
    .poll(async () => (await caller.work.pull({ teamId, eventId: next.eventId, since: 0 })).entries.length)
    .toBe(1);
  const { entries } = await caller.work.pull({ teamId, eventId: next.eventId, since: 0 });
  expect(entries[0]?.body).toMatchObject({ kind: 'snagRaised' });
  expect(JSON.stringify(entries[0]?.body)).toContain('From End event');
});
