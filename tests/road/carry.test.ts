import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { fetchCarried } from '../support/carry';
import { foundTeamAtEvent, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { type House, openHouse } from '../support/house';
import { bringPicture, photoOf } from '../support/photo';
import { DESK, PAGES, PHONE } from '../support/screens';

const SCHEMES = ['light', 'dark'] as const;
let home: House;
let van: House;
beforeAll(async () => {
  [home, van] = await Promise.all([openHouse({ pages: PAGES }), openHouse({ pages: PAGES })]);
});
afterAll(() => Promise.all([home?.close(), van?.close()]));

async function look(page: Page, name: string): Promise<void> {
  for (const size of [PHONE, DESK]) {
    await page.setViewportSize(size);
    for (const colorScheme of SCHEMES) {
      await page.emulateMedia({ colorScheme });
      await expectAccessible(page, `${name}-${size.width}-${colorScheme}`);
    }
  }
}

const jobOf = (team: TeamAtEvent, place: number) => taskRef(team.entryId, team.cardIds[place] ?? '');

it('goes from home to the van and back by a file, each piece of work once', async () => {
  const team = await foundTeamAtEvent(home, 'Larch');
  const ids = { teamId: team.teamId, eventId: team.eventId };
  const { photoId, body } = photoOf(jobOf(team, 0));
  await team.caller.work.push({ ...ids, actions: [makeAction(body, team.personId)] });
  await bringPicture({ url: home.url, teamId: team.teamId, photoId, cookie: team.cookie });
  const desk = (await openPage({ ...DESK, baseUrl: home.url, cookie: team.cookie })).page;
  await desk.goto(`/event/?${new URLSearchParams({ team: team.teamId, event: team.eventId })}`);
  const [download] = await Promise.all([
    desk.waitForEvent('download'),
    desk.getByRole('link', { name: 'Save this event as a file' }).click(),
  ]);
  expect(download.suggestedFilename()).toMatch(/^Larch-event-\d{4}-\d{2}-\d{2}\.halfshaft$/);
  const path = await download.path();

  const { userId, cookie } = await van.signUp('Larch Founder');
  const laptop = (await openPage({ ...PHONE, baseUrl: van.url, cookie })).page;
  await laptop.goto('/bring-in/');
  const other = join(tmpdir(), `no-event-${process.pid}.txt`);
  await writeFile(other, 'Shopping list');
  await laptop.getByLabel('File of an event').setInputFiles(other);
  await laptop.getByText('This is no file of an event.', { exact: false }).waitFor();
  await look(laptop, 'bring-in-refused');
  await laptop.getByLabel('File of an event').setInputFiles(path);
  await laptop.getByText('you will be its manager here', { exact: false }).waitFor();
  expect(await laptop.getByLabel('Who are you?').inputValue()).toBe(team.personId);
  await look(laptop, 'bring-in-looked');
  await laptop.getByRole('button', { name: 'Bring it in' }).click();
  await laptop.getByText('1 piece of work came in, 0 were here already, none was refused.').waitFor();
  await laptop.getByText('1 photo came too.').waitFor();
  await laptop.getByRole('link', { name: 'Open the event' }).click();
  await laptop.getByRole('heading', { name: 'Larch event' }).waitFor();

  // The same job is taken on both sides: home's stands, and the van's is named.
  const inVan = van.callAs(userId);
  const { token } = await inVan.invite.create({ ...ids, role: 'mechanic', days: 2 });
  const kai = van.callAs((await van.signUp('Kai')).userId);
  const { personId: kaiId } = await kai.invite.accept({ token, name: 'Kai' });
  const take = { kind: 'takeTask' as const, args: { task: jobOf(team, 1) } };
  const close = { kind: 'closeTask' as const, args: { task: jobOf(team, 2), findings: [], readings: [] } };
  await kai.work.push({ ...ids, actions: [makeAction(take, kaiId), makeAction(close, kaiId)] });
  await team.caller.work.push({ ...ids, actions: [makeAction(take, team.personId)] });
  const back = join(tmpdir(), `back-${process.pid}.halfshaft`);
  await writeFile(back, await fetchCarried({ url: van.url, cookie }, team.teamId, team.eventId));
  await desk.getByRole('link', { name: 'Bring a file in' }).click();
  await desk.getByLabel('File of an event').setInputFiles(back);
  await desk
    .getByText('2 pieces of work are new here. 1 piece of work is here already', { exact: false })
    .waitFor();
  await desk.getByRole('button', { name: 'Bring it in' }).click();
  await desk.getByText('1 piece of work came in, 1 was here already, 1 was refused.').waitFor();
  await desk.getByText(/Kai took '.+' at Service A: Larch Founder has it already\./).waitFor();
  await look(desk, 'bring-in-done');
  await desk.getByRole('link', { name: 'Open the event' }).click();
  await desk.getByText('Kai worked there and is now in the team here, without a sign-in.').waitFor();
  await look(desk, 'event-brought-in');
  await desk.goto(`/log/?${new URLSearchParams({ team: team.teamId, event: team.eventId })}`);
  await desk.getByText('brought in from another server by Larch Founder', { exact: false }).first().waitFor();
});
