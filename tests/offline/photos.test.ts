import type { Page } from 'playwright-core';
import sharp from 'sharp';
import { beforeAll, expect, it } from 'vitest';
import { expectAccessible, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, joinTeam } from '../support/event';
import { openHouse } from '../support/house';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import { bayOf, crash, openBay, openPhone, raiseSnag, readLog } from './phone';

const PATIENT = { timeout: 20_000 };
const WORDS = 'Oil on the hub';

const house = keepHouse({ pages: PAGES });
let camera: Buffer;
beforeAll(async () => {
  camera = await photograph();
});

/** As large as a phone's camera makes it, on its side, with the place in it. */
async function photograph(): Promise<Buffer> {
  const noise = { type: 'gaussian', mean: 120, sigma: 30 } as const;
  const grain = sharp({ create: { width: 1000, height: 750, channels: 3, background: 'grey', noise } });
  const small = await grain.png().toBuffer();
  const place = { IFD3: { GPSLatitudeRef: 'N', GPSLatitude: '52/1 13/1 0/1' } };
  return sharp(small)
    .resize(4000, 3000)
    .composite([
      {
        input: { create: { width: 1600, height: 1600, channels: 3, background: '#222' } },
        gravity: 'centre',
      },
    ])
    .withExif(place)
    .withMetadata({ orientation: 6 })
    .jpeg({ quality: 90 })
    .toBuffer();
}

const file = (buffer = camera) => ({ name: 'IMG_1.jpg', mimeType: 'image/jpeg', buffer });
const takePhoto = (page: Page, of: string) => page.getByLabel(`Take a photo of ${of}`).setInputFiles(file());
const photosIn = (page: Page) => page.getByRole('list', { name: 'Photos' });
/** Wide as the server has it: the small one is 320 pixels on its longest side. */
const widthOf = (page: Page) =>
  photosIn(page)
    .locator('img')
    .first()
    .evaluate((image: HTMLImageElement) => image.naturalWidth);

it('keeps a photo taken without a network over a killed tab, sends it once, and a second phone sees it', async () => {
  const team = await foundTeamAtEvent(house, 'Hazel');
  const { page, context } = await openPhone(house, team.cookie, { keepsPages: true });
  await openBay(page, team);
  await expect
    .poll(() => page.evaluate(() => navigator.serviceWorker.controller !== null), PATIENT)
    .toBe(true);
  await context.setOffline(true);
  await raiseSnag(page, WORDS);
  await takePhoto(page, `Snag: ${WORDS}`);
  await photosIn(page).getByText('Waits to be sent').waitFor();
  await expectAccessible(page, 'photo-waits');
  await screenshot(page, 'photo-waits');

  await crash(context, page);
  const next = await context.newPage();
  await next.goto(house.url + bayOf(team));
  await photosIn(next).getByText('Waits to be sent').waitFor();
  expect(await widthOf(next)).toBe(1200);
  const ida = await joinTeam(house, team, 'Ida Fell');
  const other = await openPhone(house, ida.cookie);
  await openBay(other.page, team);

  await context.setOffline(false);
  await expect.poll(() => photosIn(next).getByText('Waits to be sent').count(), PATIENT).toBe(0);
  await expect.poll(() => widthOf(other.page), PATIENT).toBe(240);
  const { page: second } = other;
  await photosIn(second).getByRole('button').click();
  await second.getByText('Taken by Hazel Founder.').waitFor();
  await expectAccessible(second, 'photo-large');
  await screenshot(second, 'photo-large');
  await second.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(second, 'photo-large-dark');

  const photos = (await readLog(team)).flatMap(({ body }) => (body.kind === 'factRecorded' ? [body] : []));
  expect(photos).toHaveLength(1);
  const [{ factId, fact } = { factId: '', fact: null }] = photos;
  expect(fact).toMatchObject({ kind: 'photo' });
  expect(fact?.kind === 'photo' && fact.bytes).toBeLessThan(1_000_000);
  const shown = await fetch(`${house.url}/photo?team=${team.teamId}&photo=${factId}`, {
    headers: { cookie: team.cookie },
  });
  const { width, height, exif } = await sharp(await shown.arrayBuffer()).metadata();
  expect({ size: [width, height], exif }).toEqual({ size: [1200, 1600], exif: undefined });
});

it('takes photos into a snag and a finding, keeps them over a killed tab, shows them in the log and after the event', async () => {
  const team = await foundTeamAtEvent(house, 'Rowan');
  const { page: killed, context } = await openPhone(house, team.cookie);
  await openBay(killed, team);
  await killed.getByRole('button', { name: 'Raise a snag' }).click();
  await killed.getByLabel('What is wrong?').fill(WORDS);
  await takePhoto(killed, 'the snag');
  await killed.getByRole('button', { name: 'Remove photo 1' }).waitFor();
  await crash(context, killed);
  const page = await context.newPage();
  await openBay(page, team);
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  expect(await page.getByLabel('What is wrong?').inputValue()).toBe(WORDS);
  await page.getByRole('button', { name: 'Remove photo 1' }).waitFor();
  await expectAccessible(page, 'photo-in-snag');
  await screenshot(page, 'photo-in-snag');
  await page.getByRole('button', { name: 'Raise the snag' }).click();
  await photosIn(page).first().waitFor();
  await page.getByRole('button', { name: 'Raise a snag' }).click();
  await page.getByLabel('What is wrong?').waitFor();
  expect(await page.getByRole('button', { name: 'Remove photo 1' }).count()).toBe(0);
  await page.getByRole('button', { name: 'Not yet' }).click();

  await page.getByRole('button', { name: "Something's wrong" }).nth(1).click();
  await page.getByText('Keep an eye', { exact: false }).first().click();
  await page.getByLabel('Choose one: a photo of what was found').setInputFiles(file());
  await page.getByRole('button', { name: 'Remove photo 1' }).waitFor();
  await screenshot(page, 'photo-in-finding');
  await page.getByRole('button', { name: 'Note it' }).click();
  await page.getByRole('button', { name: 'Done' }).last().click();
  await expect.poll(() => photosIn(page).count(), PATIENT).toBe(2);
  const query = `?team=${team.teamId}&event=${team.eventId}`;
  for (const [address, name] of [
    [`/log/${query}`, 'photos-in-log'],
    [`/event/end/${query}`, 'photos-at-end'],
  ] as const) {
    await page.goto(address);
    await expect.poll(() => photosIn(page).locator('img').count(), PATIENT).toBe(2);
    await expectAccessible(page, name);
    await screenshot(page, name);
  }
});

it('says of a picture that cannot be read that it cannot, and of one with no room that it stays', async () => {
  const team = await foundTeamAtEvent(house, 'Aspen');
  const full = await openHouse({
    database: house.database,
    pages: PAGES,
    photoLimits: { eventBytes: 1000, teamBytes: 9e9 },
  });
  const { page } = await openPhone(full, team.cookie);
  await openBay(page, team);
  await raiseSnag(page, WORDS);
  const broken = file(Buffer.from('no picture'));
  await page.getByLabel(`Take a photo of Snag: ${WORDS}`).setInputFiles(broken);
  await page.getByText('This phone cannot read that picture.', { exact: false }).waitFor();
  await takePhoto(page, `Snag: ${WORDS}`);
  await page.getByText('those of this event take up all', { exact: false }).waitFor();
  await photosIn(page).getByText('Not taken').waitFor();
  await expectAccessible(page, 'photo-no-room');
  await screenshot(page, 'photo-no-room');
  await page.getByRole('button', { name: 'Throw it away' }).click();
  await page.getByText('Not here yet', { exact: false }).waitFor();
  await full.close();
});
