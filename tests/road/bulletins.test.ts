import { randomUUID } from 'node:crypto';
import { changeInWords, compareItineraries } from '@halfshaft/itinerary';
import { expect, it } from 'vitest';
import { amended, publishAndTakeOver } from '../support/bulletin';
import { ITINERARY, makeAction } from '../support/event';
import { keepHouse } from '../support/keep-house';

const house = keepHouse();

const ONE_WEEK_LATER = { ...ITINERARY, startsOn: '2026-06-20' };
const TWO_WEEKS_LATER = { ...ITINERARY, startsOn: '2026-06-27' };

it('shows a draft to nobody, tells a bulletin for the car, and becomes a version once', async () => {
  const { organiser, own, caller, ids, draft } = await publishAndTakeOver(house);
  const before = await caller.event.get(ids);
  const waiting = await draft(ONE_WEEK_LATER);
  expect(waiting?.changes.length).toBeGreaterThan(0);
  expect(await caller.bulletin.open(ids)).toBeNull();
  const publishedDay = async () =>
    (await caller.event.published()).find((event) => event.publishedEventId === own.publishedEventId)
      ?.startsOn;
  expect(await publishedDay()).toBe(ITINERARY.startsOn);

  const issue = { ...own, itineraryNumber: waiting?.itineraryNumber ?? 0, note: 'A week later' };
  expect(await organiser.bulletin.issue(issue)).toEqual({ number: 1 });
  await expect(organiser.bulletin.issue(issue)).rejects.toThrow(/not the newest one any more/);
  expect(await publishedDay()).toBe(ONE_WEEK_LATER.startsOn);

  const open = await caller.bulletin.open(ids);
  expect(open).toMatchObject({ number: 1, note: 'A week later', replacesOwnVersion: false });
  expect(open?.organiserName).toBe('Larchwater Motor Club');
  expect((await caller.event.get(ids)).itineraryNumber).toBe(1);

  expect(await caller.bulletin.accept({ ...ids, number: 1 })).toEqual({ itineraryNumber: 2 });
  expect(await caller.bulletin.accept({ ...ids, number: 1 })).toEqual({ itineraryNumber: 2 });
  const after = await caller.event.get(ids);
  expect(after).toMatchObject({ itineraryNumber: 2, itineraryText: { startsOn: '2026-06-20' } });
  const told = compareItineraries(before.itinerary, after.itinerary, { position: 7 }).map(changeInWords);
  expect(open?.changes).toEqual(told);
  expect(await caller.bulletin.open(ids)).toBeNull();
});

it('offers only the newest, and says when the team’s own version would be replaced', async () => {
  const { organiser, own, caller, ids, issue } = await publishAndTakeOver(house);
  for (const itinerary of [ONE_WEEK_LATER, TWO_WEEKS_LATER]) await issue(itinerary);
  await caller.event.saveItinerary({ ...ids, itinerary: { ...ITINERARY, startIntervalSeconds: 120 } });
  expect(await caller.bulletin.open(ids)).toMatchObject({ number: 2, replacesOwnVersion: true });
  await expect(caller.bulletin.accept({ ...ids, number: 1 })).rejects.toThrow(/Bulletin 2 has come since/);
  const both = await Promise.all([1, 2].map(() => caller.bulletin.accept({ ...ids, number: 2 })));
  expect(both).toEqual([{ itineraryNumber: 3 }, { itineraryNumber: 3 }]);
  expect((await organiser.bulletin.list(own)).issued.map(({ number }) => number)).toEqual([2, 1, 0]);
});

it('counts parts that went on without their card done when it tells which jobs fall due elsewhere', async () => {
  house.clock.set(Date.parse('2026-06-13T10:30:00Z'));
  const { team, caller, ids, entryId, issue } = await publishAndTakeOver(house);
  await issue(amended());
  const jobs = async () => (await caller.bulletin.open(ids))?.cars[0]?.jobs ?? [];
  // 63.5 stage km before Service D and 54.2 before Service C; without SS5 46.6 before D and E, 77.3 before F.
  expect(await jobs()).toContain('Air filter: clean or change: due at Service E instead of Service D.');
  const cards = await caller.card.list({ teamId: ids.teamId, carId: team.carId });
  const cardId = cards.find(({ name }) => name.startsWith('Air filter'))?.id ?? '';
  const fact = { kind: 'fitted' as const, cardId, position: null, words: '' };
  const args = { factId: randomUUID(), entryId, at: { kind: 'road' as const, afterStageId: 'SS4' }, fact };
  await caller.work.push({ ...ids, actions: [makeAction({ kind: 'recordFact', args }, team.personId)] });
  // New behind SS4: 70.6 stage km to the finish, which Service F must see to; without SS5 53.7.
  expect(await jobs()).toContain('Air filter: clean or change: no longer due at Service F.');
});

it('refuses a draft that changes nothing and says nothing', async () => {
  const { organiser, own, draft } = await publishAndTakeOver(house);
  const same = await draft(ITINERARY);
  const issue = { ...own, itineraryNumber: same?.itineraryNumber ?? 0, note: '' };
  await expect(organiser.bulletin.issue(issue)).rejects.toThrow(/changes nothing/);
  expect(await organiser.bulletin.issue({ ...issue, note: 'Noise limit at SS2' })).toEqual({ number: 1 });
});
