import { randomUUID } from 'node:crypto';
import type { CarFact } from '@halfshaft/worklog';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { loadDemoWorld } from '../support/demo-house';
import { foundTeamAtEvent, joinTeam, makeAction } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });
let demo: { cookie: string; teamId: string; userId: string };
beforeAll(async () => {
  const world = await loadDemoWorld(house);
  const birch = world.demo.teams.birch;
  if (!birch) throw new Error('The demo has no team of that key.');
  const { teamId, founderUserId: userId } = birch;
  demo = { cookie: world.cookieOf(userId), teamId, userId };
});

async function openAs(cookie: string, size = PHONE, colorScheme: 'light' | 'dark' = 'light'): Promise<Page> {
  return (await openPage({ ...size, colorScheme, baseUrl: house.url, cookie })).page;
}

const sheetCalled = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true, level: 2 }) });

const PADS = 'Front brake pads: change';

it.each([
  ['a phone', PHONE, 'light'],
  ['a phone in the dark', PHONE, 'dark'],
  ['a desk', DESK, 'light'],
  ['a desk in the dark', DESK, 'dark'],
] as const)('shows what keeps failing on %s, with a table behind each chart', async (name, size, scheme) => {
  const page = await openAs(demo.cookie, size, scheme);
  await page.goto(`/reliability/?team=${demo.teamId}`);
  const pads = sheetCalled(page, PADS);
  await pads.getByText(/^Seen 7 times in \d+ stage km; last at \d+ stage km\.$/).waitFor();
  await pads.getByText('Every 150 stage km now; the log suggests', { exact: false }).waitFor();
  await pads.getByRole('img').waitFor();
  await sheetCalled(page, 'Sump guard: no crack, no bolt missing, no mud packed above it')
    .getByText(/^Seen 5 times/)
    .waitFor();
  await expectAccessible(page, `reliability-${name.replaceAll(' ', '-')}`);
  await pads.getByText('The chart as a table').click();
  await pads
    .getByRole('cell', { name: /of 10 to/ })
    .first()
    .waitFor();
  await pads.getByText('Each time it was seen').click();
  await pads.getByRole('rowheader', { name: 'Great Coppice Stages' }).first().waitFor();
  await expectAccessible(page, `reliability-open-${name.replaceAll(' ', '-')}`);
});

it('changes the limit of a card on a word of the manager, with a note, and never by itself', async () => {
  const { caller, teamId, carId } = await demoCar();
  const padsCard = async () => (await caller.card.list({ teamId, carId })).find(({ name }) => name === PADS);
  expect((await padsCard())?.intervals[0]?.every).toBe(150_000);
  const page = await openAs(demo.cookie);
  await page.goto(`/reliability/?team=${teamId}`);
  await sheetCalled(page, PADS).getByRole('button', { name: 'Change the limit of the card' }).click();
  const dialog = page.getByRole('dialog');
  const every = dialog.getByLabel('Every, stage km');
  const suggested = await every.inputValue();
  expect(Number(suggested)).toBeGreaterThan(0);
  await every.fill('none');
  await dialog.getByRole('button', { name: 'Change the limit' }).click();
  await dialog.getByText('The limit must be a number above 0.', { exact: false }).waitFor();
  await page.reload();
  await sheetCalled(page, PADS).getByRole('button', { name: 'Change the limit of the card' }).click();
  expect(await every.inputValue()).toBe('none');
  await every.fill('42,5');
  await expectAccessible(page, 'reliability-adopt');
  await dialog.getByRole('button', { name: 'Change the limit' }).click();
  await dialog.waitFor({ state: 'detached' });
  await sheetCalled(page, PADS).getByText('Every 42.5 stage km now', { exact: false }).waitFor();
  const card = await padsCard();
  expect(card?.intervals).toMatchObject([{ counter: 'stageMetres', every: 42_500 }]);
  expect(card?.instruction).toMatch(
    /Limit changed on .*, before: every 150 stage km; by the log, 7 of \d+ failed\.$/,
  );
});

/** The car of the demo's last season. */
async function demoCar() {
  const caller = house.callAs(demo.userId);
  const { teamId } = demo;
  const car = (await caller.car.list({ teamId })).find(({ name }) => name === 'Plover 1600');
  if (!car) throw new Error('The demo has no such car.');
  return { caller, teamId, carId: car.carId };
}

it('leads from the car to what keeps failing on it, and from there to another car', async () => {
  const { teamId, carId } = await demoCar();
  const page = await openAs(demo.cookie, DESK);
  await page.goto(`/car/?team=${teamId}&car=${carId}`);
  await page.getByRole('link', { name: 'What keeps failing' }).click();
  await sheetCalled(page, 'Plover 1600').waitFor();
  await page.getByRole('link', { name: 'Heron R2' }).click();
  await sheetCalled(page, 'Heron R2').waitFor();
  await page.getByText('Nothing has failed yet').waitFor();
});

it('fits nothing to too few, and says what is missing', async () => {
  const team = await foundTeamAtEvent(house, 'Few');
  const { caller, teamId, eventId, entryId, personId, carId, cookie } = team;
  const cards = await caller.card.list({ teamId, carId });
  const pads = cards.find(({ name }) => name === PADS);
  const fact: CarFact = {
    kind: 'fitted',
    cardId: pads?.id ?? '',
    position: 'FL',
    words: '',
    because: 'broke',
  };
  const at = { kind: 'service' as const, serviceId: 'B' };
  const args = { factId: randomUUID(), entryId, at, fact };
  await caller.work.push({ teamId, eventId, actions: [makeAction({ kind: 'recordFact', args }, personId)] });
  const page = await openAs(cookie);
  await page.goto(`/reliability/?team=${teamId}`);
  const sheet = sheetCalled(page, PADS);
  await sheet.getByText('Seen once in 37 stage km; last at 37 stage km.').waitFor();
  await sheet.getByText('Too few to say whether it gets better or worse.').waitFor();
  await sheet.getByText('How long it lasts can’t be said yet', { exact: false }).waitFor();
  expect(await sheet.getByRole('img').count()).toBe(0);
  expect(await sheet.getByRole('button').count()).toBe(0);
  await expectAccessible(page, 'reliability-few');

  const mechanic = await joinTeam(house, team, 'Mechanic');
  const theirs = await openAs(mechanic.cookie);
  await theirs.goto(`/reliability/?team=${teamId}`);
  await theirs.getByText('A manager of the team sees what failed on its cars.').waitFor();
});

it('takes from a phone why a part was changed, what broke, and that the car is out and goes on', async () => {
  const team = await foundTeamAtEvent(house, 'Words');
  const { caller, teamId, eventId, entryId, carId, cookie } = team;
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');

  await page.goto(`/bay/${at('B')}`);
  await page.getByRole('button', { name: 'A part was changed on the road' }).click();
  await dialog.getByLabel('Part of which job?').selectOption({ label: PADS });
  await dialog.getByText('FL', { exact: true }).click();
  await dialog.getByText('A new one of another kind').click();
  await dialog.getByText('The old one was worn out').click();
  await expectAccessible(page, 'reliability-fitted');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'A part was changed on the road' }).click();
  await dialog.getByLabel('Part of which job?').selectOption({ label: PADS });
  await dialog.getByText('The old one, altered or routed another way').click();
  expect(await dialog.getByText('Why was it changed?').count()).toBe(0);
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Something happened on the road' }).click();
  await dialog.getByText('Hard landing', { exact: true }).click();
  await dialog.getByLabel('Did a part break in it?').selectOption({ label: 'Yes: Gearbox oil level' });
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.waitFor({ state: 'detached' });

  await page.goto(`/event/road/${at('B')}`);
  await page.getByRole('button', { name: 'The car is out' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Choose for the day or for good.').waitFor();
  await dialog.getByText('For the day', { exact: true }).click();
  await dialog.getByText('Mechanical', { exact: true }).click();
  await dialog.getByLabel('A part of which job?').selectOption({ label: 'Gearbox oil level' });
  await expectAccessible(page, 'reliability-out-dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Out for the day: mechanical.').waitFor();
  await expectAccessible(page, 'reliability-out');
  await page.getByRole('button', { name: 'It starts again' }).click();
  await page.getByText('Out for the day: mechanical.').waitFor({ state: 'detached' });

  const told = async () => {
    const { entries } = await caller.work.pull({ teamId, eventId, since: 0 });
    return entries.flatMap(({ body }) => (body.kind === 'factRecorded' ? [body.fact] : []));
  };
  await expect.poll(async () => (await told()).length).toBe(5);
  const cards = await caller.card.list({ teamId, carId });
  const idOf = (name: string) => cards.find((card) => card.name === name)?.id;
  const gearbox = idOf('Gearbox oil level');
  expect(await told()).toMatchObject([
    { kind: 'fitted', cardId: idOf(PADS), position: 'FL', because: 'wornOut', otherKind: true },
    { kind: 'modified', cardId: idOf(PADS), position: null },
    { kind: 'incident', code: 'hardLanding', brokenCardId: gearbox },
    { kind: 'out', forDay: true, cause: 'mechanical', cardId: gearbox },
    { kind: 'restarted' },
  ]);
});
