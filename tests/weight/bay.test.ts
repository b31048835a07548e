import { expect, it } from 'vitest';
import { openPage } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import {
  askedScripts,
  BAY_PAGE,
  EMPTY_PAGE,
  MOST_ABOVE_EMPTY,
  MOST_OF_BAY,
  scriptsOf,
  TAKE,
  watchFirstJob,
  zippedBytes,
} from '../support/page-weight';
import { PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

it('names scripts for the bay within its weight, and above an empty page of the same build', () => {
  const [bay, empty] = [zippedBytes(scriptsOf(BAY_PAGE)), zippedBytes(scriptsOf(EMPTY_PAGE))];
  expect(empty).toBeGreaterThan(0);
  expect(bay).toBeLessThanOrEqual(MOST_OF_BAY);
  expect(bay - empty).toBeLessThanOrEqual(MOST_ABOVE_EMPTY);
});

it('asks for no more than that until a job can be taken, and for the rest behind it', async () => {
  const team = await foundTeamAtEvent(house);
  const { page } = await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie });
  await page.addInitScript(watchFirstJob, TAKE);
  const query = { team: team.teamId, event: team.eventId, car: team.entryId, at: 'A' };
  await page.goto(`/bay/?${new URLSearchParams(query)}`);
  await page.getByRole('button', { name: TAKE }).first().waitFor();
  await expect.poll(async () => (await askedScripts(page)).after.length).toBeGreaterThan(0);
  const { before } = await askedScripts(page);
  expect(before).toEqual(expect.arrayContaining(scriptsOf(BAY_PAGE)));
  expect(zippedBytes(before)).toBeLessThanOrEqual(MOST_OF_BAY);
});
