import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  return (await openPage({ ...PHONE, colorScheme, baseUrl: house.url, cookie })).page;
}
const queryOf = ({ teamId, eventId, entryId }: TeamAtEvent, at = 'A') =>
  `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at })}`;

it('asks once a service what one person looked at, tells all phones, and asks again when something has changed', async () => {
  const team = await foundTeamAtEvent(house, 'Gate');
  const mechanic = await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(team.cookie);
  const other = await openAs(mechanic.cookie, 'dark');
  for (const each of [page, other]) {
    await each.goto(`/bay/${queryOf(team)}`);
    await each.getByText('Before anyone touches the car').waitFor();
  }
  await page.getByRole('button', { name: 'Gate Founder looked at this' }).click();
  await page.getByText('Tick what you have looked at.', { exact: true }).waitFor();
  await expectAccessible(page, 'gate-question-360');
  for (const name of ['On stands', 'Wheels that stay down', 'Engine off', 'Fire extinguisher']) {
    await page.getByRole('checkbox', { name }).check();
  }
  await page.getByRole('button', { name: 'Gate Founder looked at this' }).click();

  // What was not so stays in sight, on the other phone too.
  await other.getByText(/Gate Founder looked at \d\d:\d\d: on stands/).waitFor();
  await other.getByText("The car's own extinguisher system pinned.").waitFor();
  await expectAccessible(other, 'gate-told-360-dark');
  await other.getByText('Something has changed').click();
  await other.getByRole('button', { name: 'The car was refuelled' }).click();
  await page.getByText('Look again: the car was refuelled').waitFor();

  // Another service has its own.
  await page.goto(`/bay/${queryOf(team, 'B')}`);
  await page.getByText('Before anyone touches the car').waitFor();
  await page.goto(`/log/?${new URLSearchParams({ team: team.teamId, event: team.eventId })}`);
  await page.getByText(/Gate Founder recorded before work: on stands.*Not so: the car's own/).waitFor();
  await page.getByText(/Ida Fell recorded that the car was refuelled/).waitFor();
});

it('takes from a filled sheet who looked', async () => {
  const team = await foundTeamAtEvent(house, 'Paper gate');
  await joinTeam(house, team, 'Ida Fell');
  const page = await openAs(team.cookie);
  await page.goto(`/event/sheet/record/${queryOf(team)}`);
  await page.getByLabel('Looked at by').selectOption({ label: 'Ida Fell' });
  for (const box of await page.getByRole('checkbox').all()) await box.check();
  await expectAccessible(page, 'gate-record-360');
  await page.getByRole('button', { name: 'Ida Fell looked at this' }).click();
  await page.getByText(/Ida Fell looked at/).waitFor();
  const { teamId, eventId } = team;
  const told = async () =>
    (await team.caller.work.pull({ teamId, eventId, since: 0 })).entries.map(({ by, enteredBy, body }) => [
      body.kind,
      by === enteredBy,
    ]);
  await expect.poll(told).toEqual([['factRecorded', false]]);
});
