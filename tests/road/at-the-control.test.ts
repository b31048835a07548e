import { dueAt, formatClock } from '@halfshaft/itinerary';
import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LATE_MINUTES = 5;
const SECONDS_INTO_MINUTE = 20;

const house = keepHouse({ pages: PAGES });

/** Service A of the car, planned, on a house clock that stands a few minutes after the car was due in. */
async function lateAtServiceA() {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, entryId } = team;
  const { itinerary } = await team.caller.event.get({ teamId, eventId });
  const inIndex = itinerary.points.findIndex((point) => point.id === 'TC2A');
  const plannedIn = dueAt(itinerary, inIndex, 7);
  house.clock.set((plannedIn + LATE_MINUTES * 60 + SECONDS_INTO_MINUTE) * 1000);
  const clock = (minutes: number) => formatClock(plannedIn + minutes * 60, itinerary.timeZone);
  return {
    team,
    clock,
    query: `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: 'A' })}`,
  };
}

async function openAs(cookie: string) {
  return (await openPage({ ...PHONE, baseUrl: house.url, cookie })).page;
}

it('takes the in-time in two taps, and every phone knows when the car must leave', async () => {
  const { team, clock, query } = await lateAtServiceA();
  const mechanic = await joinTeam(house, team, 'Ida Fell');
  const bay = await openAs(mechanic.cookie);
  const sheet = await openAs(team.cookie);
  await bay.goto(`/bay/${query}`);
  await sheet.goto(`/service/${query}`);
  for (const page of [bay, sheet]) {
    await page.getByRole('heading', { name: 'In-time at TC2A' }).waitFor();
    await page.getByText(`Planned in ${clock(0)}. Not recorded yet: the planned times count.`).waitFor();
    await page.getByText(`Hand in the card ${clock(0)}:00–${clock(0)}:59.`, { exact: false }).waitFor();
    await page.getByText('planned: car must leave in').waitFor();
  }
  await expectAccessible(bay, 'control-bay-before');
  let loads = 0;
  sheet.on('load', () => {
    loads += 1;
  });

  await bay.getByRole('button', { name: `Now ${clock(LATE_MINUTES)}` }).click();
  await bay.getByRole('button', { name: `Write down ${clock(LATE_MINUTES)}` }).click();

  // On the other phone, by itself: the lateness, its price, what may still be lost, and the countdown to the actual out.
  await sheet
    .getByText(`In ${clock(LATE_MINUTES)} at TC2A. 5 min late: all of it ours.`, { exact: false })
    .waitFor();
  await sheet.getByText('Penalty by the event’s rules: 50 s.', { exact: false }).waitFor();
  await sheet.getByText('Minutes still to lose: 25, 15 at one control, resets at TC6B (regroup).').waitFor();
  await sheet.getByRole('heading', { name: 'Out-time at TC2B' }).waitFor();
  await sheet.getByText(`Out ${clock(25)} by the times recorded so far, planned ${clock(20)}.`).waitFor();
  await sheet.getByText('car must leave in', { exact: true }).waitFor();
  expect(await secondsLeft(sheet)).toBeGreaterThan(19 * 60);
  expect(loads).toBe(0);
  await expectAccessible(sheet, 'control-service-after');

  // It was the event's doing in part: put right on the sheet, the bay hears of it.
  await sheet.getByRole('button', { name: 'Correct TC2A' }).click();
  await sheet.getByText('Another time, or the event held us').first().click();
  await sheet
    .getByLabel('Time on the card')
    .first()
    .fill(clock(LATE_MINUTES + 1));
  await sheet.getByLabel('The event held us').first().fill('4');
  await sheet.getByRole('button', { name: `Write down ${clock(LATE_MINUTES + 1)}` }).click();
  await bay.getByText('6 min late: 2 ours, 4 the event’s.', { exact: false }).waitFor();

  // Whoever wrote it down is told that somebody said otherwise.
  await bay.getByText('You had said otherwise, and the last one counts.', { exact: false }).waitFor();
  await bay.getByRole('button', { name: 'Read it' }).click();

  // Out late: the out-control's time is written down the same way.
  await bay.getByText('Write down the out-time at TC2B').click();
  await bay.getByRole('button', { name: 'Write it down' }).click();
  await bay.getByText('Choose a time first, or type it below.').waitFor();
  await expectAccessible(bay, 'control-bay-out');
  await bay.getByText('Another time, or the event held us').click();
  await bay.getByLabel('Time on the card').fill('half past');
  await bay.getByRole('button', { name: 'Write down half past' }).click();
  await bay.getByText('Type the time as hours and minutes, such as 13:27.').waitFor();
  await bay.getByLabel('Time on the card').fill(clock(29));
  await bay.getByRole('button', { name: `Write down ${clock(29)}` }).click();
  await sheet.getByText(`Out ${clock(29)} at TC2B. 3 min late: all of it ours.`, { exact: false }).waitFor();
  await sheet.getByText('car left at').waitFor();
  await expectAccessible(bay, 'control-bay-after');

  await sheet.goto(`/log/${query}`);
  const log = sheet.getByRole('main');
  await log.getByText(`Ida Fell wrote down ${clock(LATE_MINUTES)} at TC2A.`).waitFor();
  await log
    .getByText(`Team Founder wrote down ${clock(LATE_MINUTES + 1)} at TC2A, held by the event for 4 minutes.`)
    .waitFor();
  await log.getByText(`Ida Fell wrote down ${clock(29)} at TC2B.`).waitFor();
});

/** What the large countdown says. */
async function secondsLeft(page: Page): Promise<number> {
  const face = (await page.locator('time').first().textContent()) ?? '';
  const [minutes = 0, seconds = 0] = face.split(':').map(Number);
  return minutes * 60 + seconds;
}

it('reckons by the penalties that the managers set', async () => {
  const { team, clock, query } = await lateAtServiceA();
  const { teamId, eventId, caller } = team;
  const mechanic = await joinTeam(house, team, 'Ned Beck');
  const phone = await openAs(mechanic.cookie);
  await phone.goto(`/event/${query}`);
  await phone.getByText('Late: 10 s a minute. Early: 1 min a minute.').waitFor();
  await phone.getByText('Source: common practice, no source.', { exact: false }).waitFor();
  expect(await phone.getByRole('button', { name: 'Change lateness and penalties' }).count()).toBe(0);

  const manager = await openAs(team.cookie);
  await manager.goto(`/event/${query}`);
  await manager.getByRole('button', { name: 'Change lateness and penalties' }).click();
  const dialog = manager.getByRole('dialog');
  await dialog.getByLabel('Begin with').selectOption({ label: 'Lateness reset at each service out' });
  await dialog.getByText('Source: published answers of a hill rally', { exact: false }).waitFor();
  await dialog.getByLabel('Late, a minute').fill('15');
  await dialog.getByText('Own figures. The event’s regulations have the last word.').waitFor();
  await dialog.getByLabel('Most lateness in all').fill('a few');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.getByText('The most minutes in all must be a whole number from 0 to 600.').waitFor();
  await expectAccessible(manager, 'control-penalties');
  await dialog.getByLabel('Most lateness in all').fill('20');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await manager.getByText('Late: 15 s a minute. Early: 1 min a minute.').waitFor();
  await manager.getByText('Lateness resets at every service out.').waitFor();
  expect((await caller.event.get({ teamId, eventId })).penaltyRules).toMatchObject({
    lateSecondsPerMinute: 15,
    maxLateMinutesInTotal: 20,
    resetsAt: ['serviceOut'],
  });

  await phone.goto(`/bay/${query}`);
  await phone.getByRole('button', { name: `Now ${clock(LATE_MINUTES)}` }).click();
  await phone.getByRole('button', { name: `Write down ${clock(LATE_MINUTES)}` }).click();
  await phone.getByText('Penalty by the event’s rules: 1 min 15 s.', { exact: false }).waitFor();
  await phone
    .getByText('Minutes still to lose: 20, 15 at one control, resets at TC4B (service out).')
    .waitFor();
});
