import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { foundTeamAtEvent, makeAction } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

async function openAs(cookie: string, size: typeof PHONE, colorScheme: 'light' | 'dark' = 'light') {
  return (await openPage({ ...size, colorScheme, baseUrl: house.url, cookie })).page;
}

/** A team, the address of its tyre sheet at a service, and the stages that lie before Service A. */
async function teamWithStages() {
  const team = await foundTeamAtEvent(house);
  const { caller, teamId, eventId, entryId } = team;
  const { itinerary } = await caller.event.get({ teamId, eventId });
  const inA = itinerary.points.findIndex((point) => point.id === 'TC2A');
  const stages = itinerary.points.slice(0, inA).flatMap((point) => (point.kind === 'stage' ? [point] : []));
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  return { ...team, stages, at };
}

const inKm = (metres: number) => `${(metres / 1000).toFixed(1)} km`;
const place = (page: Page, name: string) => page.getByRole('button', { name: new RegExp(`^${name}`) });

it('adds, fits, drives and measures tyres, and prints the sheet', async () => {
  const { caller, teamId, eventId, entryId, personId, cookie, stages, at } = await teamWithStages();
  const metres = stages.reduce((sum, stage) => sum + stage.stageMetres, 0);
  const [first] = stages;
  if (!first || stages.length < 2) throw new Error('The fixture needs two stages before Service A.');
  const page = await openAs(cookie, PHONE);
  const dialog = page.getByRole('dialog');

  // The allowance, by the manager on the event's page.
  await page.goto(`/event/${at('A')}`);
  await page.getByRole('button', { name: 'Change the tyre allowance' }).click();
  await dialog.getByLabel('Tyres for each car').fill('many');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await dialog.getByText('The number of tyres must be a whole number', { exact: false }).waitFor();
  await dialog.getByLabel('Tyres for each car').fill('8');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await page.getByText('8 tyres for each car.', { exact: false }).waitFor();

  // Five tyres, corner after corner, from before the first stage.
  await page.goto(`/event/tyres/${at('A')}`);
  await page.getByText('No tyre written down yet').waitFor();
  await expectAccessible(page, 'tyres-empty');
  await place(page, 'Front left').click();
  await dialog.getByRole('button', { name: 'A tyre not written down yet' }).click();
  await dialog.getByRole('button', { name: 'Add, and another' }).click();
  await dialog.getByText('Type what is written on the tyre', { exact: false }).waitFor();
  await dialog.getByLabel('Compound').fill('medium');
  for (const mark of ['L1', 'L2', 'L3', 'L4']) {
    await dialog.getByLabel('Mark').fill(mark);
    await dialog.getByRole('button', { name: 'Add, and another' }).click();
  }
  await dialog.getByLabel('Mark').fill('l1');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await dialog.getByText('A tyre l1 is on the list already.', { exact: false }).waitFor();
  await dialog.getByLabel('Mark').fill('L5');
  await expectAccessible(page, 'tyres-add');
  await dialog.getByRole('button', { name: 'Add it' }).click();
  await page.getByText('5 of 8 tyres used, 3 left.', { exact: false }).waitFor();
  const driven = `${stages.length} stages, ${inKm(metres)}`;
  await page.getByRole('button', { name: `Front left L1 medium ${driven}` }).waitFor();
  await page.getByRole('button', { name: `Rear right L4 medium ${driven}` }).waitFor();
  await page.getByRole('button', { name: 'First spare L5 medium no stage yet' }).waitFor();

  // A puncture on the road: the spare and the tyre it replaced change places.
  await place(page, 'Front left').click();
  await dialog.getByLabel('When?').selectOption({ label: `On the road after ${first.id}` });
  await expectAccessible(page, 'tyres-place');
  await dialog.getByRole('button', { name: 'L5, medium · first spare' }).click();
  const rest = stages.length - 1;
  const restInWords = `${rest === 1 ? '1 stage' : `${rest} stages`}, ${inKm(metres - first.stageMetres)}`;
  await page.getByRole('button', { name: `Front left L5 medium ${restInWords}` }).waitFor();
  await page
    .getByRole('button', { name: `First spare L1 medium 1 stage, ${inKm(first.stageMetres)}` })
    .waitFor();

  // A stage that was not driven wears nobody's tyres.
  const confirm = (driven: boolean) =>
    makeAction(
      { kind: 'confirmStage', args: { entryId, stageId: first.id, driven, conditions: {} } },
      personId,
    );
  await caller.work.push({ teamId, eventId, actions: [confirm(false)] });
  await page.getByRole('button', { name: 'First spare L1 medium no stage yet' }).waitFor();
  await caller.work.push({ teamId, eventId, actions: [confirm(true)] });
  await page.getByRole('button', { name: 'First spare L1 medium 1 stage' }).waitFor();

  // Measured with the pad; worn below what the road asks for, a sentence says so and who decides.
  await page.getByRole('button', { name: 'Measure L5, medium, front left' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Type at least one value.').waitFor();
  for (const key of ['1', 'point', '5', 'Next', '1', 'point', '9', 'Next', '2', 'point', '2', '1'])
    await dialog.getByRole('button', { name: key, exact: true }).click();
  await dialog.getByText('Less than 1.6 mm').waitFor();
  await dialog.getByText('What to expect once it is hot').click();
  // (1.9 + 1.01325) × 333.15 / 288.15 − 1.01325 = 2.355 bar: the gas law at constant volume.
  await dialog.getByText('1.90 bar at 15 °C becomes about 2.35 bar at 60 °C', { exact: false }).waitFor();
  await expectAccessible(page, 'tyres-measure');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Front left, L5: tread 1.5 mm, less than 1.6 mm.').waitFor();
  await page.getByText('tread 1.5 mm', { exact: true }).waitFor();
  await expectAccessible(page, 'tyres-360');

  // Counted on to Service B; the log tells it; the dark desk and the paper hold the same.
  await page.goto(`/log/${at('A')}`);
  await page
    .getByText('recorded tyre L5, medium: front left, tread 1.5 mm', { exact: false })
    .first()
    .waitFor();
  for (const scheme of ['light', 'dark'] as const) {
    const desk = await openAs(cookie, DESK, scheme);
    await desk.goto(`/event/tyres/${at('A')}`);
    await desk.getByRole('cell', { name: '1.5 mm Service A' }).waitFor();
    await expectAccessible(desk, `tyres-1440-${scheme}`);
    await desk.emulateMedia({ media: 'print' });
    expect(await desk.getByRole('button', { name: 'Add a tyre' }).isVisible()).toBe(false);
    expect(await desk.getByText('cold _____ hot _____').first().isVisible()).toBe(true);
    await desk.setViewportSize({ width: 720, height: 1020 });
    await screenshot(desk, `tyres-print-${scheme}`);
    const pages = (await desk.pdf({ format: 'A4' })).toString('latin1').match(/\/Type \/Page\b/g);
    // Five tyres and the settings: no more than a sheet printed on both sides.
    expect(pages?.length).toBeLessThanOrEqual(2);
  }
});

it('changes a setting step by step and puts it back to base in one tap', async () => {
  const { cookie, at } = await teamWithStages();
  const page = await openAs(cookie, PHONE, 'dark');
  const dialog = page.getByRole('dialog');
  await page.goto(`/bay/${at('A')}`);
  await page.getByRole('link', { name: 'Tyres and settings' }).click();
  await page.getByText('Nothing changed so far').waitFor();

  await page.getByRole('button', { name: 'Change a setting' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Type what is changed.').waitFor();
  await dialog.getByLabel('What is changed?').fill('Bump');
  await dialog.getByLabel('Where?').selectOption({ label: 'Front left' });
  await dialog.getByLabel('From').fill('12 clicks');
  await dialog.getByLabel('To', { exact: true }).fill('10 clicks');
  await expectAccessible(page, 'settings-dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Now 10 clicks; base 12 clicks').waitFor();

  await page.getByRole('button', { name: 'Change again: Bump, front left' }).click();
  expect(await dialog.getByLabel('From').inputValue()).toBe('10 clicks');
  await dialog.getByLabel('To', { exact: true }).fill('9 clicks');
  await dialog.getByText('the co-driver').click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await page.getByText('Service A: 10 clicks → 9 clicks, asked for by the co-driver').waitFor();
  await expectAccessible(page, 'settings-360');

  await page.getByRole('button', { name: 'Back to base: 12 clicks. Bump, front left' }).click();
  await page.getByText('Now 12 clicks, as at base').waitFor();
  await page.getByText('Service A: 9 clicks → 12 clicks (back to base), asked for by the driver').waitFor();
  expect(await page.getByRole('button', { name: 'back to base' }).count()).toBe(0);

  // A slip is taken back from the foot of the page.
  await page.getByRole('button', { name: 'Undo' }).click();
  await page.getByText('Now 9 clicks; base 12 clicks').waitFor();
});
