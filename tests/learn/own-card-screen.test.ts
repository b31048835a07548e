import type { Locator, Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';
import { push } from './log-steps';
import { BRACKET, bracketEvents } from './own-card';
import { playBoots } from './split-boots';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size = PHONE, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  return (await openPage({ ...size, colorScheme, baseUrl: house.url, cookie })).page;
}

const sheetCalled = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true, level: 2 }) });
const FITS = 'Doing this job fits a new part';

it('advises a limit for a card a manager wrote, ticked and logged, and changes it on a word', async () => {
  const team = await foundTeamAtEvent(house, 'Bracket');
  const { caller, teamId, carId, cookie } = team;
  const page = await openAs(cookie);
  await page.goto(`/car/?team=${teamId}&car=${carId}&card=new`);
  await page.getByLabel('Name', { exact: true }).fill(BRACKET.name);
  const fits = page.getByRole('checkbox', { name: FITS });
  await page.getByRole('radio', { name: /^Round/ }).check();
  expect(await fits.count()).toBe(0);
  await page.getByRole('radio', { name: /^Job/ }).check();
  await fits.focus();
  await page.keyboard.press('Space');
  await page.getByLabel('Where on the car').selectOption({ label: 'Engine bay' });
  await page.getByLabel('Every', { exact: true }).fill('60');
  await page.getByLabel('What is counted').selectOption({ label: 'stage km' });
  await expectAccessible(page, 'own-card-form-a-phone');
  await page.reload();
  await page.getByText('What you typed earlier is back').waitFor();
  expect(await fits.isChecked()).toBe(true);
  await page.getByRole('button', { name: 'Save the card' }).click();
  await page.getByRole('link', { name: BRACKET.name }).click();
  await page.getByRole('heading', { name: BRACKET.name }).waitFor();
  expect(await fits.isChecked()).toBe(true);

  const ownCard = async () => {
    const card = (await caller.card.list({ teamId, carId })).find(({ name }) => name === BRACKET.name);
    if (!card) throw new Error('The card was not saved.');
    return card;
  };
  const { id, fitsNewPart } = await ownCard();
  expect(fitsNewPart).toBe(true);
  for (const { entered, bodies } of await bracketEvents(team, id)) await push(team, entered, bodies);

  await page.goto(`/reliability/?team=${teamId}`);
  const sheet = sheetCalled(page, BRACKET.name);
  await sheet.getByText(/^Every 60 stage km now; the log suggests \d+ stage km \(/).waitFor();
  await expectAccessible(page, 'own-card-advice-a-phone');
  await sheet.getByRole('button', { name: 'Change the limit of the card' }).click();
  const dialog = page.getByRole('dialog');
  const suggested = Number(await dialog.getByLabel('Every, stage km').inputValue());
  expect(suggested).toBeGreaterThan(0);
  await expectAccessible(page, 'own-card-adopt');
  await dialog.getByRole('button', { name: 'Change the limit' }).click();
  await dialog.waitFor({ state: 'detached' });
  await sheet.getByText(`Every ${suggested} stage km now`, { exact: false }).waitFor();
  const changed = await ownCard();
  expect(changed).toMatchObject({ fitsNewPart: true, intervals: [{ every: suggested * 1000 }] });
  expect(changed.instruction).toMatch(
    /^Limit changed on .*, before: every 60 stage km; by the log, 4 of 6 failed\.$/,
  );
});

it.each([
  ['a phone in the dark', PHONE, 'dark'],
  ['a desk', DESK, 'light'],
  ['a desk in the dark', DESK, 'dark'],
] as const)('shows the tick and the advice on %s', async (name, size, scheme) => {
  const team = await foundTeamAtEvent(house, `Shown on ${name}`);
  const { caller, teamId, carId, cookie } = team;
  const { cardId } = await caller.card.save({ teamId, carId, cardId: null, card: BRACKET });
  for (const { entered, bodies } of await bracketEvents(team, cardId)) await push(team, entered, bodies);
  const page = await openAs(cookie, size, scheme);
  await page.goto(`/car/?team=${teamId}&car=${carId}&card=${cardId}`);
  await page.getByRole('checkbox', { name: FITS }).waitFor();
  await expectAccessible(page, `own-card-form-${name.replaceAll(' ', '-')}`);
  await page.goto(`/reliability/?team=${teamId}`);
  await sheetCalled(page, BRACKET.name).getByText('now; the log suggests', { exact: false }).waitFor();
  await expectAccessible(page, `own-card-advice-${name.replaceAll(' ', '-')}`);
});

/** The boxes of a finding, one after the other. */
async function noteSplitBoot(page: Page, form: Locator, words: string): Promise<void> {
  await form.getByRole('radio', { name: 'driveshaft boots whole, no grease thrown' }).check();
  await form.getByRole('radio', { name: 'needs work' }).check();
  const [newPart, snag] = ['A new part went on', 'Raise a snag too'].map((name) =>
    form.getByRole('checkbox', { name }),
  );
  expect(await snag?.isChecked()).toBe(true);
  await newPart?.check();
  expect(await snag?.isChecked()).toBe(false);
  await form.getByRole('radio', { name: 'temporary repair' }).check();
  expect(await snag?.isChecked()).toBe(true);
  await form.getByRole('radio', { name: 'needs work' }).check();
  await newPart?.uncheck();
  await newPart?.check();
  expect(await snag?.isChecked()).toBe(false);
  const ask = form.getByRole('button', { name: 'Say where the new part went on' });
  expect(await ask.isDisabled()).toBe(true);
  await form.getByLabel('In a few words').fill(words);
  await expectAccessible(page, 'finding-new-part-asks');
  await form.getByRole('radio', { name: 'FL' }).check();
  await expectAccessible(page, 'finding-new-part');
  await form.getByRole('button', { name: 'Note it' }).click();
}

it('takes from the bay that a new part went on for what a round found', async () => {
  const team = await foundTeamAtEvent(house, 'Boots');
  const { caller, teamId, eventId, entryId, cookie } = team;
  const at = new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: 'A' });
  const page = await openAs(cookie);
  await page.goto(`/bay/?${at}`);
  const round = page
    .getByRole('listitem')
    .filter({ has: page.getByRole('heading', { name: 'Round: Front corners', exact: true }) });
  await round.getByRole('button', { name: "Something's wrong" }).click();
  const dialog = page.getByRole('dialog');
  await dialog.getByRole('radio', { name: 'temporary repair' }).check();
  expect(await dialog.getByRole('checkbox', { name: 'A new part went on' }).count()).toBe(0);
  await noteSplitBoot(page, dialog, 'split');
  await dialog.getByText('needs work, a new part went on. split', { exact: false }).waitFor();
  await dialog.getByRole('button', { name: 'Done' }).click();
  await dialog.waitFor({ state: 'detached' });
  const told = async () => {
    const { entries } = await caller.work.pull({ teamId, eventId, since: 0 });
    return entries.flatMap(({ body }) => (body.kind === 'done' ? body.findings : []));
  };
  await expect
    .poll(told)
    .toEqual([{ lookId: 'driveshafts', position: 'FL', grade: 'needsWork', words: 'split', newPart: true }]);
  const page2 = await openAs(cookie);
  await page2.goto(`/reliability/?team=${teamId}`);
  const sheet = sheetCalled(page2, 'Driveshaft boots whole, no grease thrown');
  await sheet.getByText('How long it lasts can’t be said yet', { exact: false }).waitFor();
  await expectAccessible(page2, 'round-look-too-few');
});

it('draws how long what a round looks at lasts, and sets no limit on a card for it', async () => {
  const { team } = await playBoots(house, 'Drawn', { newPart: true });
  const page = await openAs(team.cookie, PHONE, 'dark');
  await page.goto(`/reliability/?team=${team.teamId}`);
  const sheet = sheetCalled(page, 'Driveshaft boots whole, no grease thrown');
  await sheet.getByText(/^9 of 10 are still good after \d+ stage km \(/).waitFor();
  await sheet.getByRole('img').waitFor();
  expect(await sheet.getByRole('button').count()).toBe(0);
  await expectAccessible(page, 'round-look-lives');
});
