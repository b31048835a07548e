import { formatClock } from '@halfshaft/itinerary';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size: { width: number; height: number }) {
  return (await openPage({ ...size, baseUrl: house.url, cookie })).page;
}

it('takes the control’s clock in one press, and every clock of the team goes by it', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, caller } = team;
  const query = `?${new URLSearchParams({ team: teamId, event: eventId })}`;
  const offset = async () => (await caller.event.get({ teamId, eventId })).clockOffsetSeconds;
  const { timeZone } = (await caller.event.get({ teamId, eventId })).itinerary;
  const mechanic = await joinTeam(house, team, 'Ida Fell');

  const page = await openAs(team.cookie, PHONE);
  await page.goto(`/event/${query}`);
  await page.getByText('The event’s clock is taken to be the same as ours.').first().waitFor();
  await page.getByRole('button', { name: 'Set by the control’s clock' }).click();
  const dialog = page.getByRole('dialog');
  await expectAccessible(page, 'controls-clock-360');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(page, 'controls-clock-360-dark');
  await page.emulateMedia({ colorScheme: 'light' });

  await dialog.getByLabel('Another time').fill('soon');
  await dialog.getByRole('button', { name: 'It shows soon now' }).click();
  await dialog.getByText('Type the time as hours and minutes, such as 10:23', { exact: false }).waitFor();

  // The control is a quarter of an hour ahead, to the second or two that the press takes.
  const ahead = formatClock(Math.floor(house.clock.now() / 1000) + 900, timeZone);
  await dialog.getByLabel('Another time').fill(ahead);
  await dialog.getByRole('button', { name: `It shows ${ahead} now` }).click();
  await dialog.waitFor({ state: 'hidden' });
  await page
    .getByText(/The event’s clock is 1[45] min.* ahead of ours\./)
    .first()
    .waitFor();
  const set = await offset();
  // The minute is taken to have just begun, so up to one of the fifteen is lost to our own seconds.
  expect(set).toBeGreaterThan(900 - 75);
  expect(set).toBeLessThanOrEqual(900);

  // A mechanic sees the difference and cannot set it; the clock on the page goes by it.
  const phone = await openAs(mechanic.cookie, DESK);
  await phone.goto(`/event/${query}`);
  await phone.getByText(/The event’s clock is 1[45] min/).waitFor();
  expect(await phone.getByRole('button', { name: 'Set by the control’s clock' }).count()).toBe(0);
  const shown =
    (await phone
      .getByText(/^Official time/)
      .first()
      .textContent()) ?? '';
  const now = Math.floor(house.clock.now() / 1000) + set;
  expect([now - 60, now, now + 60].map((at) => `Official time ${formatClock(at, timeZone)}`)).toContain(
    shown,
  );
  await expectAccessible(phone, 'controls-clock-1440');

  await page.getByRole('button', { name: 'Set by the control’s clock' }).click();
  await dialog.getByRole('button', { name: 'No difference' }).click();
  await page.getByText('The event’s clock is taken to be the same as ours.').first().waitFor();
  expect(await offset()).toBe(0);
});
