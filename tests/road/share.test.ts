import { randomUUID } from 'node:crypto';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { publishAndTakeOver } from '../support/bulletin';
import { foundTeamAtEvent, makeAction, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

/** What happened to a car in two stages. */
async function drive(
  { caller, personId }: TeamAtEvent,
  at: { teamId: string; eventId: string },
  entryId: string,
) {
  const snag = { snagId: randomUUID(), entryId, serviceId: 'A', place: 'frontLeft', words: 'Knocks' };
  const ford = { kind: 'incident' as const, code: 'ford' as const, place: null, words: '' };
  const bodies = [
    { kind: 'confirmStage' as const, args: { entryId, stageId: 'SS1', driven: true, conditions: {} } },
    { kind: 'confirmStage' as const, args: { entryId, stageId: 'SS2', driven: true, conditions: {} } },
    { kind: 'raiseSnag' as const, args: { ...snag, urgent: false } },
    {
      kind: 'recordFact' as const,
      args: { factId: randomUUID(), entryId, at: { kind: 'road' as const, afterStageId: 'SS1' }, fact: ford },
    },
  ];
  const actions = bodies.map((body) => makeAction(body, personId));
  const { results } = await caller.work.push({ ...at, actions });
  expect(results.map(({ status }) => status)).toEqual(bodies.map(() => 'accepted'));
}

it('goes from a team’s choice to the organiser’s table, once five teams share', async () => {
  const { organiserCookie, own, team, ids, entryId } = await publishAndTakeOver(house);
  await drive(team, ids, entryId);
  for (const name of ['Asp', 'Birch', 'Cedar', 'Dogwood']) {
    const other = await foundTeamAtEvent(house, name);
    const { teamId, carId, caller } = other;
    const { eventId } = await caller.event.takeOver({ teamId, ...own });
    const entry = { carNumber: '9', startPosition: 9, people: 2 };
    const entered = await caller.event.enter({ teamId, eventId, carId, ...entry });
    await drive(other, { teamId, eventId }, entered.entryId);
    await caller.share.choose({ teamId, eventId, choice: 'rows' });
  }

  const desk = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  await desk.goto(`/organiser/?organiser=${own.organiserId}`);
  await desk.getByText('nothing is shown before five teams share', { exact: false }).waitFor();
  await desk.getByText('Some of it is held back', { exact: false }).waitFor();
  await expectAccessible(desk, 'shares-waiting');

  const phone = (await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie })).page;
  await phone.goto(`/event/?${new URLSearchParams({ team: ids.teamId, event: ids.eventId })}`);
  await phone.getByText('The organiser is told nothing of your log.').waitFor();
  await phone.getByRole('button', { name: 'Choose what the organiser is told' }).click();
  await phone.getByText('What that would be now').click();
  await phone.getByRole('row', { name: /^18\.65 stage km .*Snag, Front left: 1\./ }).waitFor();
  await phone.getByText('Sums, and each car without a name').click();
  await expectAccessible(phone, 'share-choice');
  await phone.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(phone, 'share-choice-dark', ['color-contrast']);
  await phone.getByRole('button', { name: 'Save' }).click();
  await phone.getByText('The organiser is told sums, and each of your cars without a name.').waitFor();

  await desk.reload();
  await desk.getByText('5 teams, 93.25 stage km together.').waitFor();
  await desk.getByRole('row', { name: 'Snag: Front left 5 53.6' }).waitFor();
  await desk.getByText('5 cars, without names').click();
  await expectAccessible(desk, 'shares-told');
  await desk.setViewportSize(PHONE);
  await desk.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(desk, 'shares-told-phone');

  await phone.getByRole('button', { name: 'Choose what the organiser is told' }).click();
  await phone.getByText('Nothing', { exact: true }).click();
  await phone.getByRole('button', { name: 'Save' }).click();
  await phone.getByText('The organiser is told nothing of your log.').waitFor();
  await desk.reload();
  await desk.getByText('nothing is shown before five teams share', { exact: false }).waitFor();
});
