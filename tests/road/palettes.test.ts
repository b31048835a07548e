import { afterAll, beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { type House, openHouse } from '../support/house';
import { DESK, PAGES, PHONE } from '../support/screens';

const PALETTES = ['Paper', 'Graphite', 'Sun', 'Night'];
const SIZES = [PHONE, DESK];

// What a palette can break; the rest of these pages is looked at with all the others.
const COLOURS = ['color-contrast', 'link-in-text-block'];

let house: House;
beforeAll(async () => {
  house = await openHouse({ pages: PAGES });
});
afterAll(() => house.close());

it('shows event, bay and the crew’s page in four palettes, chosen in one tap and kept', async () => {
  const team = await foundTeamAtEvent(house, 'Palette');
  const { page } = await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie });
  const query = new URLSearchParams({ team: team.teamId, event: team.eventId, car: team.entryId, at: 'A' });
  const inks = new Set<string>();
  for (const route of ['event', 'bay', 'event/road']) {
    await page.goto(`/${route}/?${query}`);
    await page.getByText('Palette car').first().waitFor();
    for (const palette of PALETTES) {
      await page.getByText(palette, { exact: true }).click();
      inks.add(await page.evaluate(inkOnGround));
      for (const size of SIZES) {
        await page.setViewportSize(size);
        const name = `palette-${route.replace('/', '-')}-${size.width}-${palette}`;
        await expectAccessible(page, name.toLowerCase(), COLOURS);
      }
    }
    await page.reload();
    await expect.poll(() => page.getByRole('radio', { name: PALETTES.at(-1) ?? '' }).isChecked()).toBe(true);
  }
  expect(inks.size).toBe(PALETTES.length);
});

/** Runs in the page. */
function inkOnGround(): string {
  const { color, backgroundColor } = getComputedStyle(document.body);
  return `${color} on ${backgroundColor}`;
}
