import type { Page } from 'playwright-core';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, makeAction, taskRef } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const LOOK = 'After a hard landing: look';

const house = keepHouse({ pages: PAGES });

/** A second car of the team, with the whole starter set. */
async function enterFullCar(name: string) {
  const team = await foundTeamAtEvent(house, name);
  const { caller, teamId, eventId } = team;
  const car = { name: 'Second car', drive: 'front', surface: 'gravel', starterCards: 'full' } as const;
  const { carId } = await caller.car.create({ teamId, ...car });
  const place = { carNumber: '8', startPosition: 8, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  const cards = await caller.card.list({ teamId, carId });
  const starter = (id: string) => {
    const found = cards.find(({ starterId }) => starterId === `starter:${id}`);
    if (!found) throw new Error(`The starter set has no card "${id}".`);
    return found;
  };
  const at = (letter: string) =>
    `?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: letter })}`;
  return { ...team, entryId, starter, at };
}

async function openAs(cookie: string): Promise<Page> {
  return (await openPage({ ...PHONE, baseUrl: house.url, cookie })).page;
}

const sheetCalled = (page: Page, title: string) =>
  page.locator('section').filter({ has: page.getByRole('heading', { name: title, exact: true, level: 2 }) });

it('follows a hard landing to its look, its temporary repair and the lasting one', async () => {
  const { caller, teamId, eventId, personId, entryId, starter, cookie, at } = await enterFullCar('Landing');
  const cardId = starter('after-a-hard-landing').id;
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');

  // What, where, done.
  await page.goto(`/bay/${at('A')}`);
  await sheetCalled(page, 'Do now').getByText(LOOK).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Something happened on the road' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Choose what happened.').waitFor();
  await dialog.getByText('Hard landing', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Front left' }).click();
  await expectAccessible(page, 'happened-dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();

  // Its card is due here, with the reason, and the way back is offered.
  const doNow = sheetCalled(page, 'Do now');
  await doNow.getByText(LOOK).waitFor();
  await doNow.getByText('hard landing on SS', { exact: false }).first().waitFor();
  await page.getByRole('button', { name: 'Undo' }).click();
  await doNow.getByText(LOOK).waitFor({ state: 'detached' });
  await page.getByRole('button', { name: 'Something happened on the road' }).click();
  await dialog.getByText('Hard landing', { exact: true }).click();
  await dialog.getByRole('button', { name: 'Front left' }).click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await doNow.getByText(LOOK).waitFor();
  await expectAccessible(page, 'happened-bay');

  // On the sheet too, and while nobody has looked, the crew is asked to.
  await page.goto(`/service/${at('A')}`);
  await sheetCalled(page, 'Do now').getByText('Hard landing on SS', { exact: false }).first().waitFor();
  const crew = sheetCalled(page, 'For the crew, at the first halt');
  await crew.getByText(LOOK).waitFor();
  await expectAccessible(page, 'happened-service');

  // Closed with a temporary repair: the crew looks at that one instead, and it is due again at the next service.
  const wire = {
    lookId: null,
    position: null,
    grade: 'temporaryRepair',
    words: 'strap on the guard',
  } as const;
  const close = makeAction(
    { kind: 'closeTask', args: { task: taskRef(entryId, cardId, 'A'), findings: [wire], readings: [] } },
    personId,
  );
  await caller.work.push({ teamId, eventId, actions: [close] });
  await crew.getByRole('heading', { name: LOOK, exact: true }).waitFor({ state: 'detached' });
  await crew.getByRole('heading', { name: `Look at the temporary repair: ${LOOK}` }).waitFor();
  await crew.getByText('Made at Service A: strap on the guard.').waitFor();
  await expectAccessible(page, 'happened-crew');
  await page.goto(`/bay/${at('B')}`);
  await sheetCalled(page, 'Do now')
    .getByText('temporary repair at Service A: strap on the guard', { exact: false })
    .waitFor();
  const repairs = sheetCalled(page, 'Temporary repairs');
  await repairs.getByText('made at Service A · strap on the guard').waitFor();
  await expectAccessible(page, 'happened-repair');

  // Made good: gone from both.
  await repairs.getByRole('button', { name: 'Made good' }).click();
  await repairs.waitFor({ state: 'detached' });
  await sheetCalled(page, 'Do now').getByText(LOOK).waitFor({ state: 'detached' });

  await page.goto(`/log/${at('B')}`);
  const log = page.getByRole('main');
  await log
    .getByText('recorded hard landing (Front left); on the road after SS', { exact: false })
    .first()
    .waitFor();
  await log.getByText('(temporary repair at Service A) is made good', { exact: false }).waitFor();
});

it('follows a part changed on the road to its first look, and takes it back', async () => {
  const { starter, cookie, at } = await enterFullCar('Shaft');
  const shafts = starter('driveshafts').name;
  const look = starter('look-at-new-part').name;
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');
  const changed = page.getByRole('button', { name: 'A part was changed on the road' });

  // In the bay: which job, where, done.
  await page.goto(`/bay/${at('B')}`);
  await changed.click();
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  await dialog.getByText('Choose the job the part belongs to.').waitFor();
  await dialog.getByLabel('Part of which job?').selectOption({ label: shafts });
  await dialog.getByText('FL', { exact: true }).click();
  await expectAccessible(page, 'fitted-dialog');
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  const doNow = sheetCalled(page, 'Do now');
  await doNow.getByText(`first look after "${shafts}"`, { exact: false }).waitFor();
  await expectAccessible(page, 'fitted-bay');
  await page.getByRole('button', { name: 'Undo' }).click();
  await doNow.getByText(look).waitFor({ state: 'detached' });

  // From the crew's list, for what they do after Service A.
  await page.goto(`/service/${at('A')}`);
  await changed.click();
  await dialog.getByLabel('Part of which job?').selectOption({ label: shafts });
  await dialog.getByRole('button', { name: 'Write it down' }).click();
  const crew = sheetCalled(page, 'For the crew, at the first halt');
  await crew.getByRole('button', { name: 'Undo' }).waitFor();
  await expectAccessible(page, 'fitted-crew');
  await page.goto(`/service/${at('B')}`);
  await doNow.getByText(`First look after "${shafts}"`, { exact: false }).waitFor();
  await page.goto(`/log/${at('B')}`);
  await page.getByText(`recorded new parts for '${shafts}'`, { exact: false }).first().waitFor();
});

it('puts the lamps on before a stage the manager expects to be dark', async () => {
  const { caller, teamId, eventId, starter, cookie, at } = await enterFullCar('Dark');
  const lamps = starter('night-lamps').name;
  const { points } = (await caller.event.get({ teamId, eventId })).itinerary;
  const outOfA = points.findIndex((point) => point.kind === 'control' && point.roles.includes('serviceOut'));
  const next = points.slice(outOfA).find((point) => point.kind === 'stage');
  if (!next) throw new Error('The fixture itinerary has no stage after Service A.');
  const page = await openAs(cookie);
  const dialog = page.getByRole('dialog');
  const doNow = sheetCalled(page, 'Do now');

  await page.goto(`/service/${at('A')}`);
  await doNow.getByRole('listitem').first().waitFor();
  expect(await doNow.getByText(lamps, { exact: true }).count()).toBe(0);
  await page.goto(`/event/?${new URLSearchParams({ team: teamId, event: eventId })}`);
  await page.getByText('Nothing is expected so far', { exact: false }).waitFor();
  await page.getByRole('button', { name: 'Change what the stages will be like' }).click();
  const stage = dialog.getByRole('group', { name: new RegExp(`^${next.id}\\b`) });
  await stage.getByRole('button', { name: 'Night: none' }).click();
  await stage.getByRole('button', { name: 'Night: some' }).click();
  await stage.getByRole('button', { name: 'Night: bad' }).waitFor();
  await expectAccessible(page, 'conditions-dialog');
  await dialog.getByRole('button', { name: 'Save' }).click();
  await sheetCalled(page, 'What the stages will be like').getByText('night bad').waitFor();
  await expectAccessible(page, 'conditions-event');

  await page.goto(`/service/${at('A')}`);
  await doNow.getByText(lamps, { exact: true }).waitFor();
  await doNow.getByText(`Dark stage ${next.id} comes before`, { exact: false }).waitFor();
});

it('opens signed wheel nuts again once a wheel has come off after them', async () => {
  const { caller, teamId, eventId, personId, entryId, starter } = await enterFullCar('Nuts');
  const close = (id: string) =>
    makeAction(
      {
        kind: 'closeTask',
        args: { task: taskRef(entryId, starter(id).id, 'A'), findings: [], readings: [] },
      },
      personId,
    );
  await caller.work.push({ teamId, eventId, actions: [close('wheel-nuts'), close('oil-and-filter')] });
  await caller.work.push({ teamId, eventId, actions: [close('front-pads')] });
  const { entries } = await caller.work.pull({ teamId, eventId, since: 0 });
  const reopened = entries.flatMap(({ body }) => (body.kind === 'reopened' ? [body] : []));
  expect(reopened).toHaveLength(1);
  expect(reopened[0]?.task).toEqual(taskRef(entryId, starter('wheel-nuts').id, 'A'));
});
