import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { bayOf, openBay, openPhone, raiseSnag } from '../offline/phone';
import { foundTeamAtEvent, joinTeam, makeAction, type TeamAtEvent, taskRef } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const PALETTES = ['Paper', 'Graphite', 'Sun', 'Night'];
const SIZES = [PHONE, DESK];

// What a palette can break; the rest of the page is looked at once.
const COLOURS = ['color-contrast', 'link-in-text-block'];

const house = keepHouse({ pages: PAGES });
let team: TeamAtEvent;
beforeAll(async () => {
  team = await foundTeamAtEvent(house, 'Palette');
});

it('shows event, bay, board and the crew’s page in four palettes, chosen in one tap and kept', async () => {
  const { page } = await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie });
  const inks = new Set<string>();
  for (const route of ['event', 'bay', 'board', 'event/road']) {
    await page.goto(addressOf(route));
    await page
      .getByText(route === 'board' ? 'official time' : 'Palette car')
      .first()
      .waitFor();
    for (const palette of PALETTES) {
      await page.getByText(palette, { exact: true }).click();
      inks.add(await page.evaluate(inkOnGround));
      await lookAt(page, `${route.replace('/', '-')}-${palette}`);
    }
    await page.reload();
    await expect.poll(() => page.getByRole('radio', { name: PALETTES.at(-1) ?? '' }).isChecked()).toBe(true);
  }
  expect(inks.size).toBe(PALETTES.length);
});

describe('when something is missing, in four palettes', () => {
  it('shows what waits on the phone, what was refused, and the way to raise a snag', async () => {
    const { page, context } = await openPhone(house, team.cookie);
    await openBay(page, team);
    await context.setOffline(true);
    await raiseSnag(page, 'Rattle under the tunnel');
    await page.getByRole('button', { name: "I've got it" }).last().click();
    await page.getByText('2 entries kept on this phone', { exact: false }).waitFor();
    await lookInAllPalettes(page, 'bay-offline');
    await page.getByRole('button', { name: 'Raise a snag' }).click();
    await page.getByLabel('What is wrong?').waitFor();
    await lookInAllPalettes(page, 'snag-offline');
    await page.keyboard.press('Escape');

    const mia = await joinTeam(house, team, 'Mia');
    for (const cardId of team.cardIds) {
      const task = taskRef(team.entryId, cardId);
      const actions = [makeAction({ kind: 'takeTask', args: { task } }, mia.personId)];
      await mia.caller.work.push({ teamId: team.teamId, eventId: team.eventId, actions });
    }
    await context.setOffline(false);
    await page.getByText('Mia has it already', { exact: false }).first().waitFor();
    await lookInAllPalettes(page, 'bay-refused');
  });

  it('shows that a page is still loading', async () => {
    const { page } = await openPhone(house, team.cookie);
    // Neither answered nor refused, as behind a hill.
    await page.route('**/trpc/event.get**', () => undefined);
    for (const route of ['bay', 'board', 'event/road']) {
      await page.goto(addressOf(route));
      await page
        .getByText(/^Fetching/)
        .first()
        .waitFor();
      await lookInAllPalettes(page, `${route.replace('/', '-')}-loading`);
    }
  });

  it('shows that an event is not there', async () => {
    const { page } = await openPhone(house, team.cookie);
    const nobodys = '00000000-0000-4000-8000-000000000000';
    for (const route of ['bay', 'board', 'event/road']) {
      await page.goto(addressOf(route).replaceAll(team.eventId, nobodys));
      await page
        .getByText(/does not exist|not yours/i)
        .first()
        .waitFor();
      await lookInAllPalettes(page, `${route.replace('/', '-')}-error`);
    }
  });
});

function addressOf(route: string): string {
  return bayOf(team).replace('/bay/', `/${route}/`);
}

/** In every palette, set as the choice sets it: behind an open dialog nothing can be tapped. */
async function lookInAllPalettes(page: Page, name: string): Promise<void> {
  await page.setViewportSize(PHONE);
  await expectAccessible(page, `palette-${name}`);
  for (const palette of PALETTES) {
    await page.evaluate((theme) => {
      document.documentElement.dataset.theme = theme;
    }, palette.toLowerCase());
    await lookAt(page, `${name}-${palette}`);
  }
}

async function lookAt(page: Page, name: string): Promise<void> {
  for (const size of SIZES) {
    await page.setViewportSize(size);
    await expectAccessible(page, `palette-${name}-${size.width}`.toLowerCase(), COLOURS);
  }
}

/** Runs in the page. */
function inkOnGround(): string {
  const { color, backgroundColor } = getComputedStyle(document.body);
  return `${color} on ${backgroundColor}`;
}
