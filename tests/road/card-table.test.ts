import { readFileSync } from 'node:fs';
import type { Page } from 'playwright-core';
import { beforeAll, expect, it } from 'vitest';
import { openPage, runAxe, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';

const SIZES = [
  { width: 360, height: 740, colorScheme: 'dark' as const },
  { width: 1440, height: 900, colorScheme: 'light' as const },
];
const WRONG = 'Name;Place;Every;Minutes\nLamps;roof rack;1 day;2,5\nHorn;body;2 days;quick\n';
const MENDED = WRONG.replace('roof rack', 'body').replace('quick', '1');

const house = keepHouse({ pages: PAGES });
let team: TeamAtEvent;
beforeAll(async () => {
  team = await foundTeamAtEvent(house);
});

async function openCar(view: (typeof SIZES)[number], card?: string): Promise<Page> {
  const { page } = await openPage({ ...view, baseUrl: house.url, cookie: team.cookie });
  const query = new URLSearchParams({ team: team.teamId, car: team.carId, ...(card ? { card } : {}) });
  await page.goto(`/car/?${query}`);
  return page;
}

const cardsOf = (carId: string) => team.caller.card.list({ teamId: team.teamId, carId });

it.each(SIZES)(
  'a pasted table at $width px: wrong cells by place, kept over a reload, then saved',
  async (view) => {
    const before = await cardsOf(team.carId);
    const page = await openCar(view, 'table');
    const box = page.getByLabel('Or the rows, pasted');
    await box.fill(WRONG);
    const problems = page.getByRole('button', { name: /^Row \d/ });
    await expect.poll(() => problems.count()).toBe(2);
    expect(await problems.allInnerTexts()).toEqual([
      expect.stringMatching(/Row 2, column 2, Place.*“roof rack” is not known here/s),
      expect.stringMatching(/Row 3, column 4, Minutes.*Write one, such as 4/s),
    ]);
    await page.getByRole('button', { name: 'Add the cards' }).click();
    await page.getByText('Not saved').waitFor();
    expect(await cardsOf(team.carId)).toEqual(before);
    await screenshot(page, `card-table-wrong-${view.width}`);
    expect(await runAxe(page)).toEqual([]);

    await page.reload();
    await page.getByText('What you typed earlier is back').waitFor();
    expect(await box.inputValue()).toBe(WRONG);
    await box.fill(MENDED);
    await page.getByText('2 cards are new.').waitFor();
    await screenshot(page, `card-table-good-${view.width}`);
    expect(await runAxe(page)).toEqual([]);
    const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(overflow).toBeLessThanOrEqual(0);
    await page.getByRole('button', { name: 'Add 2 cards' }).click();
    await page.getByRole('link', { name: 'Bring in a table' }).waitFor();
    const added = (await cardsOf(team.carId)).slice(before.length);
    expect(added.map(({ name, seconds }) => [name, seconds])).toEqual([
      ['Lamps', 150],
      ['Horn', 60],
    ]);
  },
);

it('cards go out as a file and come in to another car as they were', async () => {
  const page = await openCar({ width: 1440, height: 900, colorScheme: 'light' });
  const waiting = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Download the cards' }).click();
  const file = await waiting;
  expect(file.suggestedFilename()).toBe('Team car cards.csv');
  const path = await file.path();
  expect(readFileSync(path, 'utf8')).toMatch(/^\uFEFFName,Kind,Place,Every,/);

  const { carId } = await team.caller.car.create({
    ...{ teamId: team.teamId, name: 'Second car', drive: 'front', surface: 'gravel', starterCards: 'none' },
  });
  await page.goto(`/car/?team=${team.teamId}&car=${carId}&card=table`);
  await page.getByLabel('A file').setInputFiles(path);
  const cards = await cardsOf(team.carId);
  await page.getByRole('radio', { name: /^Replace/ }).check();
  await page.getByRole('button', { name: `Replace by ${cards.length} cards` }).click();
  await page.getByRole('link', { name: 'Bring in a table' }).waitFor();
  const plain = ({ id: _id, looks, readings, ...card }: (typeof cards)[number]) => ({
    ...card,
    looks: looks.map(({ words }) => words),
    readings: readings.map(({ id: _readingId, ...reading }) => reading),
  });
  expect((await cardsOf(carId)).map(plain)).toEqual(cards.map(plain));
});

it('a card is copied to its own car and to another', async () => {
  const { carId } = await team.caller.car.create({
    ...{ teamId: team.teamId, name: 'Third car', drive: 'front', surface: 'gravel', starterCards: 'none' },
  });
  const [card] = await cardsOf(team.carId);
  if (!card) throw new Error('The car has no card.');
  const page = await openCar({ width: 360, height: 740, colorScheme: 'light' }, card.id);
  await page.getByRole('button', { name: 'Copy the card' }).click();
  await screenshot(page, 'card-copy-360');
  expect(await runAxe(page)).toEqual([]);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await page.getByRole('heading', { name: `${card.name} (2)` }).waitFor();

  await page.getByRole('button', { name: 'Copy the card' }).click();
  await page.getByLabel('To which car').selectOption(carId);
  await page.getByRole('button', { name: 'Copy', exact: true }).click();
  await page.waitForURL((url) => url.searchParams.get('car') === carId);
  const { id: _id, ...body } = card;
  await expect.poll(() => cardsOf(carId)).toMatchObject([{ ...body, name: `${card.name} (2)` }]);
});
