import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { publishAndTakeOver } from '../support/bulletin';
import { joinTeam } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

it('goes from the organiser’s box to the team’s car', async () => {
  const { organiserCookie, own, team, caller, ids, entryId } = await publishAndTakeOver(house);
  const desk = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  const event = { organiser: own.organiserId, event: own.publishedEventId };
  await desk.goto(`/organiser/?${new URLSearchParams(event)}`);
  const box = desk.getByLabel('Cars in the order of Section 1');
  const typed = 'Car\tPosition\n14\t1\n7\tthird\n14\t3';
  await box.fill(typed);
  await desk.getByRole('button', { name: 'Save the start list' }).click();
  await desk.getByText('“third” in row 3 is no start position.', { exact: false }).waitFor();
  await desk.getByText('Car 14 stands in row 2 already.', { exact: false }).waitFor();
  expect(await box.inputValue()).toBe(typed);
  await expectAccessible(desk, 'start-list-problems');
  expect(await caller.startList.open(ids)).toEqual([]);
  await box.fill('Car\tPosition\n14\t1\n7\t3');
  await desk.getByRole('button', { name: 'Save the start list' }).click();
  await desk.getByText('2 cars are on the list.').waitFor();

  // The order is set anew from the second section on: a list of its own.
  await desk.getByLabel('Order from').selectOption('2');
  await desk.getByLabel('Cars in the order of Section 2').fill('7 1\n14 2');
  await desk.getByRole('button', { name: 'Save the start list' }).click();
  await desk.getByText('2 cars are on the list.').waitFor();
  await desk.setViewportSize(PHONE);
  await desk.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(desk, 'start-list-saved');

  const mechanic = await joinTeam(house, team, 'Ida Fell');
  const query = `?${new URLSearchParams({ team: ids.teamId, event: ids.eventId })}`;
  const said = 'Car 7 starts 3rd, then 1st from Section 2 on. Set so far: start position 7.';
  const phone = (await openPage({ ...PHONE, baseUrl: house.url, cookie: mechanic.cookie })).page;
  await phone.goto(`/event/${query}`);
  await phone.getByText(said).waitFor();
  await phone.getByText('A manager takes it over for the team.').waitFor();
  await expect(mechanic.caller.startList.take({ teamId: ids.teamId, entryId })).rejects.toThrow(/manager/);

  const page = (await openPage({ ...PHONE, baseUrl: house.url, cookie: team.cookie })).page;
  await page.goto(`/event/${query}`);
  await page.getByText(said).waitFor();
  await expectAccessible(page, 'start-list-team');
  await page.getByRole('button', { name: 'Take it over for car 7' }).click();
  await page.getByText('Start position 3, then 1 from Section 2 on, 2 people at service').waitFor();
  await page.getByText(said).waitFor({ state: 'detached' });
  const { entries } = await caller.event.get(ids);
  expect(entries[0]).toMatchObject({ startPosition: 3, positionsBySection: { 2: 1 }, people: 2 });
  expect(await caller.startList.open(ids)).toEqual([]);
});

it('goes by the newest list, and says what stands in the way', async () => {
  const { organiser, own, team, caller, ids, entryId } = await publishAndTakeOver(house);
  const { teamId } = ids;
  const save = (source: string, section = 1) => organiser.startList.save({ ...own, section, source });
  expect(await save('7 x')).toMatchObject({ ok: false, problems: [{ row: 1, column: 2 }] });
  expect(await save('7 4')).toEqual({ ok: true, cars: 1 });
  expect(await save('14 4\n7 5')).toEqual({ ok: true, cars: 2 });
  expect(await caller.startList.open(ids)).toEqual([
    { entryId, carNumber: '7', places: [{ section: 1, position: 5 }] },
  ]);
  const listed = await organiser.startList.list(own);
  expect(listed.sections.slice(0, 2)).toEqual([1, 2]);
  expect(listed.lists).toMatchObject([{ section: 1, source: '14 4\n7 5', cars: 2 }]);

  const { carId } = await caller.car.create({
    teamId,
    name: 'Second car',
    drive: 'rear',
    surface: 'gravel',
    starterCards: 'none',
  });
  await caller.event.enter({ ...ids, carId, carNumber: '21', startPosition: 5, people: 2 });
  await expect(caller.startList.take({ teamId, entryId })).rejects.toThrow(/Start position 5 is taken/);
  await save('14 4');
  await expect(caller.startList.take({ teamId, entryId })).rejects.toThrow(/No start list names car 7/);
  expect(await caller.startList.open(ids)).toEqual([]);

  // An event of the team's own has no list.
  expect(await caller.startList.open({ teamId, eventId: team.eventId })).toEqual([]);
});
