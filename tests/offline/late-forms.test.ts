import { expect, it } from 'vitest';
import { expectAccessible } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { BAY_PAGE, scriptsOf, TAKE } from '../support/page-weight';
import { PAGES } from '../support/screens';
import { bayOf, openPhone, raiseSnag, readLog, snagWords } from './phone';

const house = keepHouse({ pages: PAGES });

it('takes a job when the network went before the forms came, says so of a form, and opens it once they can be fetched', async () => {
  const team = await foundTeamAtEvent(house, 'Late forms');
  const { page } = await openPhone(house, team.cookie);
  const firstScreen = scriptsOf(BAY_PAGE);
  const address = '**/_next/static/chunks/*.js';
  await page.route(address, (route) =>
    firstScreen.includes(new URL(route.request().url()).pathname) ? route.continue() : route.abort(),
  );
  await page.goto(bayOf(team));
  await page.getByRole('button', { name: TAKE }).first().click();
  await page.getByRole('button', { name: 'Let it go' }).waitFor();
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  await page.getByText('This form has not reached the phone yet.', { exact: false }).waitFor();
  await expectAccessible(page, 'late-form-360');

  await page.unroute(address);
  await page.getByRole('button', { name: 'Try again' }).click();
  await page.getByLabel('What is wrong?').waitFor();
  await page.getByRole('button', { name: 'Not yet' }).click();
  await raiseSnag(page, 'Rattle at the back');
  await expect.poll(async () => snagWords(await readLog(team))).toEqual(['Rattle at the back']);
});
