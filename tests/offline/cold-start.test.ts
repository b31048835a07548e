import { expect, it } from 'vitest';
import { screenshot } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import { bayOf, countKeptReplicas, openPhone, visit } from './phone';

const house = keepHouse({ pages: PAGES });

it('shows home and its events without a network, once they were seen with one', async () => {
  const team = await foundTeamAtEvent(house, 'Copperbeck');
  const { context, page } = await openPhone(house, team.cookie, { keepsPages: true });
  await page.goto('/home/');
  await page.getByText('Copperbeck event').first().waitFor();
  await page.evaluate(() => navigator.serviceWorker.ready.then(() => undefined));
  // The answers are written a moment after they came.
  await page.waitForTimeout(2500);
  await context.setOffline(true);
  await page.close();
  const cold = await context.newPage();
  await cold.goto('/home/');
  await cold.getByText('Copperbeck event').first().waitFor();
  await screenshot(cold, 'offline-home');
});

it('forgets all of it when a person signs out of a shared phone', async () => {
  const team = await foundTeamAtEvent(house, 'Birch');
  const { page } = await openPhone(house, team.cookie, { keepsPages: true });
  await visit(page, bayOf(team));
  await page.goto('/home/');
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Sign out' }).click();
  await page.waitForURL(`${house.url}/`);
  expect(await page.evaluate(countKeptReplicas)).toBe(0);
});
