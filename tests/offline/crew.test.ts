import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible } from '../browser/chromium';
import { foundTeamAtEvent, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import { openPhone, readLog, untilKept } from './phone';

const house = keepHouse({ pages: PAGES });

/** The crew's page is on the screen and on the phone, and the network is gone. */
async function driveOff(team: TeamAtEvent) {
  const { context, page } = await openPhone(house, team.cookie, { keepsPages: true });
  const query = new URLSearchParams({ team: team.teamId, event: team.eventId, car: team.entryId, at: 'A' });
  await page.goto(`/event/road/?${query}`);
  await page.getByRole('heading', { name: 'Debrief' }).waitFor();
  await untilKept(page);
  await context.setOffline(true);
  return { context, page };
}

async function bodiesInLog(team: TeamAtEvent) {
  return (await readLog(team)).map(({ body }) => body);
}

it('takes stage, conditions and a snag from the crew in three taps each, without a network', async () => {
  const team = await foundTeamAtEvent(house, 'Tarn');
  const { context, page } = await driveOff(team);
  const button = (name: string | RegExp) => page.getByRole('button', { name });

  const first = page.getByRole('button', { name: /^SS\d+ done$/ });
  const stage = (await first.textContent())?.replace(' done', '') ?? '';
  await first.click();
  await page.getByRole('group', { name: 'Water' }).getByRole('button', { name: 'bad' }).click();
  await button('Driven, and so it was').click();
  await page.getByText('driven · water bad').waitFor();
  expect(await first.textContent()).not.toContain(stage);

  await button('Something is wrong').click();
  await expectAccessible(page, 'road-snag');
  await button('Rear left').click();
  await button('Stop for this').click();
  await page.getByText('stop for this · raised by').waitFor();
  await expectAccessible(page, 'road-after');

  expect(await bodiesInLog(team)).toEqual([]);
  await context.setOffline(false);
  await expect.poll(async () => (await bodiesInLog(team)).length, { timeout: 60_000 }).toBe(2);
  expect(await bodiesInLog(team)).toMatchObject([
    { kind: 'stageConfirmed', stageId: stage, driven: true, conditions: { water: 1000 } },
    { kind: 'snagRaised', place: 'rearLeft', urgent: true, stop: true, serviceId: 'A' },
  ]);
});

const LINES = ['Vibration from the left rear', 'soft pedal on the last stage', 'nice weather'];

it('keeps a debrief as it is typed and makes of a line only what is tapped, once', async () => {
  const team = await foundTeamAtEvent(house, 'Debrief');
  const { context, page } = await driveOff(team);
  const box = page.getByLabel('What does the crew say?');
  const offer = (name: string) => page.getByRole('button', { name });

  await box.fill(LINES.join('\n'));
  await offer(`Look at “Wheel nuts: torque”: ${LINES[0]}`).click();
  await offer(`It happened: soft brake pedal: ${LINES[1]}`).click();
  await page.getByText('Taken down: It happened: soft brake pedal.').waitFor();
  await offer(`Snag, whole car: ${LINES[2]}`).click();
  await expectAccessible(page, 'road-debrief');

  // Taken back, the line is offered again; a reload loses neither what was typed nor what was taken.
  await offer('Undo').click();
  await offer(`Snag, whole car: ${LINES[2]}`).waitFor();
  await page.reload();
  expect(await box.inputValue()).toBe(LINES.join('\n'));
  await page.getByText('Taken down: Look at “Wheel nuts: torque”.').waitFor();
  await expect.poll(() => countOffers(page, `It happened: soft brake pedal: ${LINES[1]}`)).toBe(0);

  await context.setOffline(false);
  await expect.poll(async () => (await bodiesInLog(team)).length, { timeout: 60_000 }).toBe(4);
  const [look, incident, snag, undone] = await bodiesInLog(team);
  expect(look).toMatchObject({
    kind: 'snagRaised',
    place: 'rearLeft',
    words: `Look at “Wheel nuts: torque”: ${LINES[0]}`,
  });
  expect(incident).toMatchObject({
    kind: 'factRecorded',
    at: { kind: 'road' },
    fact: { kind: 'incident', code: 'softPedal', place: 'cockpit', words: LINES[1] },
  });
  expect(snag).toMatchObject({ kind: 'snagRaised', place: 'wholeCar', words: LINES[2] });
  expect(undone).toMatchObject({ kind: 'undone' });

  // It waits at the next service.
  await page.getByRole('link', { name: 'Bay' }).click();
  await page.getByText(`Snag: Look at “Wheel nuts: torque”: ${LINES[0]}`).waitFor();
});

function countOffers(page: Page, name: string): Promise<number> {
  return page.getByRole('button', { name }).count();
}
