import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { openBay, openPhone } from '../offline/phone';
import { foundTeamAtEvent, joinTeam, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';

const PATIENT = { timeout: 20_000 };
const WALL = { width: 1920, height: 1080 };

const house = keepHouse({ pages: PAGES });

const boardOf = ({ teamId, eventId }: TeamAtEvent) => `/board/?team=${teamId}&event=${eventId}`;
const openBoard = (team: TeamAtEvent, size: { width: number; height: number }, keepsPages = false) =>
  openPage({
    ...size,
    baseUrl: house.url,
    cookie: team.cookie,
    keepsPages,
    tolerated: [/ERR_INTERNET_DISCONNECTED|ERR_FAILED|Failed to load resource/],
  });

/** A second car with as many cards, and the first one's control has written it in a few minutes ago. */
async function fillBoard(team: TeamAtEvent): Promise<void> {
  const { caller, teamId, eventId, entryId, personId } = team;
  const second = { name: 'Second car', drive: 'four', surface: 'gravel', starterCards: 'full' } as const;
  const { carId } = await caller.car.create({ teamId, ...second });
  await caller.event.enter({ teamId, eventId, carId, carNumber: '21', startPosition: 9, people: 3 });
  const replica = await caller.event.get({ teamId, eventId });
  const [first] = replica.itinerary.points;
  const act = (body: Parameters<typeof makeAction>[0]) =>
    caller.work.push({ teamId, eventId, actions: [makeAction(body, personId)] });
  const now = (first?.firstCarAt ?? 0) + 3 * 3600;
  house.clock.set(now * 1000);
  for (const [number, words] of [
    'Oil on the front left hub',
    'Brake pedal goes long',
    'Lamp hangs',
  ].entries()) {
    const snag = { entryId, serviceId: 'A', place: 'body', words, urgent: number === 1 };
    await act({ kind: 'raiseSnag', args: { snagId: crypto.randomUUID(), ...snag } });
  }
  const inAt = now - 4 * 60 - (now % 60);
  await act({ kind: 'recordTime', args: { entryId, controlId: 'TC2A', writtenAt: inAt, heldMinutes: 0 } });
  const card = await caller.card.list({ teamId, carId: team.carId });
  const nuts = card.find(({ needsSignature }) => needsSignature);
  if (!nuts) throw new Error('No starter card asks for a signature any more.');
  const readings = nuts.readings.flatMap(({ id, positions }) =>
    positions.map((position) => ({ readingId: id, position, value: 110 })),
  );
  await act({ kind: 'closeTask', args: { task: taskRef(entryId, nuts.id), findings: [], readings } });
}

it('follows a claim made on another phone, fits a wall without scrolling, and goes on without a network', async () => {
  const team = await foundTeamAtEvent(house, 'Alder');
  await fillBoard(team);
  const { page, context } = await openBoard(team, WALL, true);
  await page.goto(boardOf(team));
  const car = page.getByRole('region', { name: 'Car 7' });
  await car.getByText('waits for a signature').waitFor();
  const row = car.getByRole('listitem').filter({ hasText: 'Snag: Oil on the front left hub' });
  expect(await row.getByText('open').count()).toBe(1);

  const ida = await joinTeam(house, team, 'Ida Fell');
  const phone = await openPhone(house, ida.cookie);
  await openBay(phone.page, team);
  const task = phone.page.getByRole('listitem').filter({ hasText: 'Snag: Oil on the front left hub' });
  await task.getByRole('button', { name: "I've got it" }).click();
  await row.getByText('Ida Fell has it').waitFor(PATIENT);

  for (const number of [7, 21]) {
    const jobs = page.getByRole('region', { name: `Car ${number}` }).getByText(/begin by|signature|Snag/);
    expect(await jobs.count(), `car ${number}`).toBeGreaterThanOrEqual(12);
  }
  await page.getByRole('region', { name: 'Car 21' }).getByText('more open').waitFor();
  const height = await page.evaluate(() => document.documentElement.scrollHeight);
  await expectAccessible(page, 'board-wall');
  await screenshot(page, 'board-wall');
  expect(height).toBeLessThanOrEqual(WALL.height);
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(page, 'board-wall-dark');
  await screenshot(page, 'board-wall-dark');

  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), PATIENT)
    .toBe(true);
  await context.setOffline(true);
  await page.reload();
  await page.getByText('What you see may be out of date', { exact: false }).waitFor(PATIENT);
  await row.getByText('Ida Fell has it').waitFor();
});

it('can be read on a phone too, and offers nothing to press on a car', async () => {
  const team = await foundTeamAtEvent(house, 'Elm');
  await fillBoard(team);
  const { page } = await openBoard(team, { width: 360, height: 740 });
  await page.goto(boardOf(team));
  const car = page.getByRole('region', { name: 'Car 7' });
  await car.getByText('waits for a signature').waitFor();
  expect(await car.getByRole('button').count()).toBe(0);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(360);
  await expectAccessible(page, 'board-phone');
  await screenshot(page, 'board-phone');
});
