import { dueAt, formatClock } from '@halfshaft/itinerary';
import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam, makeAction, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LAPTOP = { width: 1440, height: 900 };
const SECONDS_INTO_MINUTE = 20;

const house = keepHouse({ pages: PAGES });

/** The clock of the car by minutes after it is due at a point, and a way to set the house's clock to such a moment. */
async function clocksAt(team: TeamAtEvent, pointId: string) {
  const { teamId, eventId, caller } = team;
  const { itinerary } = await caller.event.get({ teamId, eventId });
  const at = dueAt(
    itinerary,
    itinerary.points.findIndex((point) => point.id === pointId),
    7,
  );
  return {
    planned: at,
    clock: (minutes: number) => formatClock(at + minutes * 60, itinerary.timeZone),
    setTo: (minutes: number) => house.clock.set((at + minutes * 60 + SECONDS_INTO_MINUTE) * 1000),
  };
}

function queryOf({ teamId, eventId, entryId }: TeamAtEvent, at: string): string {
  return `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at })}`;
}

async function openAs(cookie: string, view = PHONE, colorScheme: 'light' | 'dark' = 'light') {
  return (await openPage({ ...view, colorScheme, baseUrl: house.url, cookie })).page;
}

it('takes the start and the finish of a stage in two taps each, and moves all that follows', async () => {
  const team = await foundTeamAtEvent(house);
  const stage = await clocksAt(team, 'SS1');
  const service = await clocksAt(team, 'TC2A');
  const crew = await joinTeam(house, team, 'Ida Fell');
  stage.setTo(2);
  const phone = await openAs(crew.cookie);
  const laptop = await openAs(team.cookie, LAPTOP);
  await laptop.goto(`/event/${queryOf(team, 'A')}`);
  await laptop.getByText(`${service.clock(0)} – ${service.clock(20)}`).waitFor();
  await laptop.getByText('The flag stands where the car is now by plan.').waitFor();
  await phone.goto(`/bay/${queryOf(team, 'A')}`);
  const way = phone.locator('section', {
    has: phone.getByRole('heading', { name: 'On the way to Service A' }),
  });
  await way.getByRole('heading', { name: 'Start of SS1, Otter Moss (I)' }).waitFor();
  await expectAccessible(phone, 'on-the-way-start');
  await screenshot(phone, 'on-the-way-360');

  await way.getByRole('button', { name: `Now ${stage.clock(2)}` }).click();
  await way.getByRole('button', { name: `Write down ${stage.clock(2)}` }).click();
  await way.getByRole('heading', { name: 'Finish of SS1' }).waitFor();

  // On the laptop, by itself: everything after the stage is two minutes later.
  await laptop.getByText(`${service.clock(2)} – ${service.clock(22)}`).waitFor();
  await laptop.getByText(`planned ${service.clock(0)} – ${service.clock(20)}`).waitFor();
  await laptop.getByText('2 min later by the times so far').first().waitFor();
  await laptop.getByText('by the times written down so far', { exact: false }).waitFor();

  stage.setTo(11);
  await phone.reload();
  await way.getByRole('button', { name: `Now ${stage.clock(11)}` }).click();
  await way.getByRole('button', { name: `Write down ${stage.clock(11)}` }).click();
  await way.getByText('All times on the way (2 of 7 written down)').click();
  await way.getByText(`${stage.clock(2)}, 2 min later than due`).waitFor();
  await way.getByText(`${stage.clock(11)}, 9 min on the stage`).waitFor();
  await expectAccessible(phone, 'on-the-way-list');
  await screenshot(phone, 'on-the-way-list-360');

  // A wrong start is put right from the list.
  await way.getByRole('button', { name: 'Correct Start of SS1' }).click();
  await way.getByText('Another time', { exact: true }).click();
  await way.getByLabel('Time on the card').fill(stage.clock(1));
  await way.getByRole('button', { name: `Write down ${stage.clock(1)}` }).click();
  await way.getByText(`${stage.clock(11)}, 10 min on the stage`).waitFor();
  await laptop.getByText(`${service.clock(1)} – ${service.clock(21)}`).waitFor();

  await phone.goto(`/log/${queryOf(team, 'A')}`);
  const log = phone.getByRole('main');
  await log.getByText(`Ida Fell wrote down ${stage.clock(2)} at the start of SS1.`).waitFor();
  await log.getByText(`Ida Fell wrote down ${stage.clock(11)} at the finish of SS1.`).waitFor();
});

it('keeps a late car in its service, and lists its times beside the planned ones', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, entryId, personId, caller } = team;
  const service = await clocksAt(team, 'TC2A');
  const record = (controlId: string, minutes: number) => {
    const args = { entryId, controlId, writtenAt: service.planned + minutes * 60, heldMinutes: 0 };
    const actions = [makeAction({ kind: 'recordTime', args }, personId)];
    return caller.work.push({ teamId, eventId, actions });
  };
  await record('TC2A', 25);
  service.setTo(40);
  const choose = `?${new URLSearchParams({ team: teamId, event: eventId })}`;
  for (const [view, scheme] of [
    [PHONE, 'light'],
    [PHONE, 'dark'],
    [LAPTOP, 'light'],
    [LAPTOP, 'dark'],
  ] as const) {
    const page = await openAs(team.cookie, view, scheme);
    await page.goto(`/event/${choose}`);
    await page.getByText(`in ${service.clock(25)}, 25 late`).waitFor();
    await page.getByText('now, out in 4 min').waitFor();
    await page.getByText('Minutes still to lose, section by section').click();
    await page.getByText('Minutes still to lose: 5, resets at TC6B (regroup).').waitFor();
    await expectAccessible(page, `actual-times-${view.width}-${scheme}`);
    await screenshot(page, `actual-times-${view.width}-${scheme}`);
  }
  const page = await openAs(team.cookie);
  await page.goto(`/bay/${choose}`);
  await page.getByRole('link', { name: /Service A/ }).waitFor();

  // Written out, it is on to the next.
  await record('TC2B', 44);
  await page.getByRole('link', { name: /Service B/ }).waitFor();
});

it('offers every kind of control the itinerary has where early may be allowed', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, caller } = team;
  const page = await openAs(team.cookie);
  await page.goto(`/event/${queryOf(team, 'A')}`);
  await page.getByRole('button', { name: 'Change lateness and penalties' }).click();
  const dialog = page.getByRole('dialog');
  const mainControls = dialog.getByRole('textbox', { name: /^Main controls/ });
  await dialog.getByText('The event’s regulations decide. Compare every figure with them.').waitFor();
  await dialog.getByText('More', { exact: true }).click();
  await dialog.getByRole('checkbox', { name: /Arriving at regroup/ }).check();
  await mainControls.fill('TC2A, TC99');
  // Folded away again, the problem must still be found by the keyboard.
  await dialog.getByText('More', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.getByText('TC99 is no control of this itinerary.', { exact: false }).waitFor();
  expect(await mainControls.evaluate((field) => field === document.activeElement)).toBe(true);
  await expectAccessible(page, 'penalties-problem');
  await screenshot(page, 'penalties-problem-360');
  expect(await mainControls.inputValue()).toBe('TC2A, TC99');
  await mainControls.fill('TC2A');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await page.getByText('Early is allowed: arriving at the finish, arriving at regroup.').waitFor();
  const { penaltyRules } = await caller.event.get({ teamId, eventId });
  expect(penaltyRules).toMatchObject({ mainControls: ['TC2A'] });
  expect([...penaltyRules.earlyAllowedAt].sort()).toEqual(['finish', 'regroupIn']);
});
