import { afterAll, beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { type House, openHouse } from '../support/house';
import { PAGES, PHONE } from '../support/screens';

let house: House;
beforeAll(async () => {
  house = await openHouse({ pages: PAGES });
});
afterAll(() => house.close());

it('asks for no work on a car that is out, from there on, until it starts again', async () => {
  const { teamId, eventId, entryId, cookie } = await foundTeamAtEvent(house);
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  const { page } = await openPage({ ...PHONE, baseUrl: house.url, cookie });
  const dialog = page.getByRole('dialog');
  const outSince = page.getByText('Out since SS4');
  const nothing = page.getByText('Nothing must be done here.');

  await page.goto(`/event/road/${at('B')}`);
  await page.getByRole('button', { name: 'The car is out' }).click();
  await dialog.getByText('For good', { exact: true }).click();
  await dialog.getByText('Mechanical', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Out for good: mechanical.').waitFor();

  for (const screen of ['service', 'bay']) {
    await page.goto(`/${screen}/${at('B')}`);
    await outSince.waitFor();
    await nothing.first().waitFor();
    expect(await page.getByText('0 cards can wait').count()).toBe(1);
    expect(await page.getByRole('heading', { name: 'For the crew, at the first halt' }).count()).toBe(0);
    await expectAccessible(page, `out-${screen}`);
  }
  await page.goto(`/board/?${new URLSearchParams({ team: teamId, event: eventId })}`);
  await outSince.waitFor();
  await page.getByText('Nothing is open here.').waitFor();

  await page.goto(`/service/${at('A')}`);
  await page.getByRole('heading', { name: 'Do now' }).waitFor();
  expect(await nothing.count()).toBe(0);
  expect(await outSince.count()).toBe(0);

  await page.goto(`/event/road/${at('B')}`);
  await page.getByRole('button', { name: 'It starts again' }).click();
  await page.getByText('Out for good: mechanical.').waitFor({ state: 'detached' });
  await page.goto(`/service/${at('B')}`);
  await page.getByRole('heading', { name: 'Do now' }).waitFor();
  // The phone first shows what it kept, and then what the log has had since.
  await nothing.first().waitFor({ state: 'detached' });
});
