import { expect, it } from 'vitest';
import { expectAccessible, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam } from '../support/event';
import { PASSWORD } from '../support/house';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import {
  bayOf,
  countKept,
  holdBack,
  openBay,
  openPhone,
  raiseSnag,
  readLog,
  snagWords,
  takeOver,
} from './phone';

const PATIENT = { timeout: 15_000 };

const house = keepHouse({ pages: PAGES });

it('sends nobody’s entries under the name of whoever signed in next, and both are told', async () => {
  const team = await foundTeamAtEvent(house, 'Larch');
  const ida = await joinTeam(house, team, 'Ida Fell');
  const { page, context } = await openPhone(house, ida.cookie);
  await openBay(page, team);
  await context.setOffline(true);
  for (const words of ['Rattle one', 'Rattle two']) await raiseSnag(page, words);
  await page.getByText('2 entries kept on this phone', { exact: false }).waitFor();

  await takeOver(context, house, team.cookie);
  await context.setOffline(false);
  await page.reload();
  const waits = page.getByText(
    '2 entries of Ida Fell wait on this phone until Ida Fell signs in here again.',
  );
  await waits.waitFor();
  await raiseSnag(page, 'Rattle three');
  await expect.poll(async () => snagWords(await readLog(team)), PATIENT).toEqual(['Rattle three']);
  await expectAccessible(page, 'shared-phone-other');
  await screenshot(page, 'shared-phone-other');
  expect(await countKept(page)).toBe(2);

  // Nobody signed in: they wait, and the screen asks.
  await context.clearCookies();
  await page.reload();
  await page.getByRole('link', { name: 'Sign in' }).first().waitFor();
  expect(await countKept(page)).toBe(2);

  await takeOver(context, house, ida.cookie);
  await page.goto('/home/');
  await expect
    .poll(async () => snagWords(await readLog(team)), PATIENT)
    .toEqual(['Rattle three', 'Rattle one', 'Rattle two']);
  const log = await readLog(team);
  expect(log.map(({ by, enteredBy }) => [by, enteredBy])).toEqual([
    [team.personId, team.personId],
    [ida.personId, ida.personId],
    [ida.personId, ida.personId],
  ]);
  await expect.poll(() => countKept(page), PATIENT).toBe(0);
});

it('keeps what is typed and what waits when the session ends in the middle of it', async () => {
  const team = await foundTeamAtEvent(house, 'Fern');
  const { page, context } = await openPhone(house, team.cookie);
  await openBay(page, team);
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  await page.getByLabel('What is wrong?').fill('Half a sentence');
  await context.clearCookies();
  await page.reload();
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  expect(await page.getByLabel('What is wrong?').inputValue()).toBe('Half a sentence');
  await page.getByRole('button', { name: 'Raise the snag' }).click();
  await page.getByText('What you entered is kept on this phone.').first().waitFor();
  expect(await countKept(page)).toBe(1);
  await screenshot(page, 'session-ended');
  await takeOver(context, house, team.cookie);
  await page.reload();
  await expect.poll(async () => snagWords(await readLog(team)), PATIENT).toEqual(['Half a sentence']);
});

it('asks before a shared phone is wiped, says what would be lost, and loses it only when told to', async () => {
  const team = await foundTeamAtEvent(house, 'Birch');
  const { page } = await openPhone(house, team.cookie);
  await openBay(page, team);
  await holdBack(page);
  await raiseSnag(page, 'Smell of petrol');
  await expect.poll(() => countKept(page), PATIENT).toBe(1);
  const leave = async () => {
    await page.goto('/home/');
    await page.getByRole('heading', { level: 1 }).waitFor();
    await page.getByText('1 entry of Birch Founder waits on this phone.', { exact: false }).waitFor();
    await page.getByRole('button', { name: 'Sign out' }).click();
    const dialog = page.getByRole('dialog');
    await dialog.getByText('It stays on this phone', { exact: false }).waitFor();
    await dialog.getByText('What it is').click();
    await dialog.getByText('Smell of petrol', { exact: false }).waitFor();
    return dialog;
  };
  const first = await leave();
  await expectAccessible(page, 'sign-out-waiting');
  await screenshot(page, 'sign-out-waiting');
  await first.getByRole('button', { name: 'Sign out, keep it' }).click();
  await page.waitForURL(`${house.url}/`);
  expect(await countKept(page)).toBe(1);
  await page.goto('/sign-in/');
  await page.getByText('1 entry of Birch Founder waits on this phone.', { exact: false }).waitFor();

  const { email } = await house.signUp('Somebody Else');
  await page.getByLabel('E-mail').fill(email);
  await page.getByLabel('Password').fill(PASSWORD);
  await page.getByRole('button', { name: 'Sign in' }).click();
  await page.waitForURL(`${house.url}/home/`);
  const second = await leave();
  await second.getByLabel('Throw it away').check();
  await second.getByRole('button', { name: 'Throw away and sign out' }).click();
  await page.waitForURL(`${house.url}/`);
  await expect.poll(() => countKept(page), PATIENT).toBe(0);
});

it('tells a helper who was taken out meanwhile what became of each entry, and loses no fact', async () => {
  const team = await foundTeamAtEvent(house, 'Copper');
  const { teamId } = team;
  const kim = await joinTeam(house, team, 'Kim Rowan');
  const { page, context } = await openPhone(house, kim.cookie);
  await openBay(page, team);
  await context.setOffline(true);
  await raiseSnag(page, 'Loose exhaust');
  const people = await team.caller.people.list({ teamId });
  const membershipId = people.find(({ personId }) => personId === kim.personId)?.membership?.membershipId;
  await team.caller.people.revoke({ teamId, membershipId: membershipId ?? '' });
  await raiseSnag(page, 'Oil on the sump guard');
  const take = page.getByRole('button', { name: /got it/ }).first();
  await take.click();
  await page.getByText('3 entries kept on this phone', { exact: false }).waitFor();
  await context.setOffline(false);
  await expect
    .poll(async () => snagWords(await readLog(team)), PATIENT)
    .toEqual(['Loose exhaust', 'Oil on the sump guard']);
  const log = await readLog(team);
  expect(log.map(({ flags }) => flags.map(({ code }) => code))).toEqual([
    ['afterRevocation'],
    ['afterRevocation'],
  ]);
  expect(log.every(({ by, enteredBy }) => by === kim.personId && enteredBy === kim.personId)).toBe(true);
  await page.getByText('Read it. Next (2 more)').waitFor();
  await page.getByText('You are no longer in this team.', { exact: false }).first().waitFor();
  await page.getByText('You are no longer in this team, or the event', { exact: false }).waitFor();
  await expect.poll(() => countKept(page), PATIENT).toBe(0);
  await screenshot(page, 'revoked-helper');
  await page.goto(bayOf(team));
});
