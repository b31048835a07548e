import { resolve } from 'node:path';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { publishAndTakeOver } from '../support/bulletin';
import { ITINERARY } from '../support/event';
import { type House, openHouse } from '../support/house';
import { DESK, PAGES, PHONE } from '../support/screens';

let house: House;
beforeAll(async () => {
  house = await openHouse({ pages: PAGES });
});
afterAll(() => house.close());

// Service A of the fixture lies between TC2A and TC2B, Service B between TC4A and TC4B, 20 minutes each.
const HEAD = 'Car,Control,Due,Time';
const LIST = [
  HEAD,
  '1,TC2A,9:35,9:35',
  '1,TC2B,9:55,9:58',
  '2,TC2A,9:36,9:42',
  '2,TC2B,9:56,10:02',
  '3,TC2A,9:37,9:37',
  '3,TC2B,9:57,9:57',
  '1,TC4B,11:53,12:10',
  '2,TC4B,11:54,11:54',
].join('\n');

it('goes from pasted times to who left service late, and why', async () => {
  const { organiser, organiserCookie, own } = await publishAndTakeOver(house);
  const page = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  const query = `?${new URLSearchParams({ organiser: own.organiserId, event: own.publishedEventId })}`;
  await page.goto(`/organiser/${query}`);
  await page.getByRole('link', { name: 'Times at controls' }).click();
  await page.getByText('Nothing is saved for this event yet.', { exact: false }).waitFor();
  await expectAccessible(page, 'times-empty');

  const box = page.getByLabel('Who came to which control, and when');
  const save = page.getByRole('button', { name: 'Save the times' });
  const wrong = `${HEAD}\n1,SS1,9:35,9:36\n2,TC2A,9:36`;
  await box.fill(wrong);
  await save.click();
  await page.getByText('SS1 in row 2 is a stage.', { exact: false }).waitFor();
  await page.getByText('Row 3 has a due time but not when car 2 came.', { exact: false }).waitFor();
  expect(await box.inputValue()).toBe(wrong);
  expect((await organiser.timeList.get(own)).saved).toBeNull();
  await expectAccessible(page, 'times-problems');

  await page
    .getByLabel('Or a CSV file')
    .setInputFiles({ name: 'times.csv', mimeType: 'text/csv', buffer: Buffer.from(LIST) });
  await page.getByText('8 times of 3 cars.').waitFor();
  const told = '3 of 5 times a car left service late: by 6 min in the middle, 17 min at worst.';
  await page.getByText(told, { exact: false }).first().waitFor();
  expect((await organiser.timeList.get(own)).saved).toBeNull();
  const maximum = page.getByLabel('Maximum lateness at a control');
  await maximum.fill('soon');
  await page.getByText('Type whole minutes, from 0 to 720.').waitFor();
  await maximum.fill('10');
  await page.getByText('1 of these was over the 10 min', { exact: false }).waitFor();
  await expectAccessible(page, 'times-preview');

  await save.click();
  await page.getByText('8 times are on the list.').waitFor();
  await page
    .getByText('In 1 of these the service itself took too long, by 3 min.', { exact: false })
    .waitFor();
  await page.getByText('1 brought all of it along from the road.', { exact: false }).waitFor();
  await page
    .getByText('Of 1 nobody can say: the list lacks the clock at the way in', { exact: false })
    .waitFor();
  const serviceA = page.getByRole('row', { name: /^A, TC2A to TC2B/ });
  expect(await serviceA.getByRole('cell').first().textContent()).toContain('2 of 3, 67 %');
  expect((await organiser.timeList.get(own)).saved).toMatchObject({ maxLateMinutes: 10, source: LIST });

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the times' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('Larchwater Stages times.csv');
  await page.reload();
  await page.getByText('by you.', { exact: false }).waitFor();
  await expectAccessible(page, 'times-saved-desk');
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize(PHONE);
  await expectAccessible(page, 'times-saved-phone-dark');
  await page.emulateMedia({ colorScheme: 'light', media: 'print' });
  expect(await box.isVisible()).toBe(false);
  await page.setViewportSize({ width: 794, height: 1123 });
  await screenshot(page, 'times-print');
  await page.pdf({
    path: resolve(import.meta.dirname, '../screenshots/times.pdf'),
    preferCSSPageSize: true,
  });
});

// The same cars at every control up to Service A, reckoned from the timetable: car 1 loses 4 minutes on the way to TC1 and 3
// in its service, car 2 loses 6 on the way to TC2A.
const EVERYWHERE = [
  HEAD,
  ...['TC0,8:00,8:00', 'TC1,8:25,8:29', 'TC2,8:58,9:02', 'TC2A,9:35,9:39', 'TC2B,9:55,10:02'].map(
    (rest) => `1,${rest}`,
  ),
  ...['TC0,8:01,8:01', 'TC1,8:26,8:26', 'TC2,8:59,8:59', 'TC2A,9:36,9:42', 'TC2B,9:56,10:02'].map(
    (rest) => `2,${rest}`,
  ),
  ...['TC0,8:02,8:02', 'TC1,8:27,8:27', 'TC2,9:00,9:00'].map((rest) => `3,${rest}`),
].join('\n');

it('tells on which way minutes were lost, and blames no car twice', async () => {
  const { organiser, organiserCookie, own } = await publishAndTakeOver(house);
  await organiser.timeList.save({ ...own, source: EVERYWHERE, maxLateMinutes: 5, replaces: null });
  const page = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  const query = `?${new URLSearchParams({ organiser: own.organiserId, event: own.publishedEventId })}`;
  await page.goto(`/organiser/times/${query}`);
  const sheet = page.getByRole('region', { name: 'Late at the other controls' });
  // Late are car 1 at TC1, TC2 and TC2A, 4 minutes each, and car 2 at TC2A, 6 minutes.
  await sheet
    .getByText('4 of 11 times a car came late: by 4 min in the middle, 6 min at worst.', { exact: false })
    .waitFor();
  await sheet
    .getByText('In 2 of these minutes were lost on the way there: by 5 min in the middle', { exact: false })
    .waitFor();
  await sheet.getByText('2 brought all of it along from before.', { exact: false }).waitFor();
  await sheet.getByText('1 of these was over the 5 min', { exact: false }).waitFor();
  await sheet.getByText('Nobody came late to TC0.').waitFor();
  const along = sheet.getByRole('list', { name: 'Lateness along the route' }).getByRole('listitem');
  expect(await along.allTextContents()).toEqual([
    'TC1, Otter Moss1 of 3 late: 4 min',
    'TC2, Quarry Bank1 of 3 late: 4 min',
    'TC2A, Service in2 of 2 late: 5 min, at worst 6',
  ]);
  await sheet.getByText('Every figure, and how it is reckoned').click();
  const wayToService = sheet.getByRole('row', { name: /^TC2A, Service in/ }).getByRole('cell');
  // Each begins with the label that a narrow page shows.
  expect((await wayToService.allTextContents()).slice(2)).toEqual([
    'Lost on the wayonce, by 6 min',
    'Lost in all2 times, by 5 min, at worst 6',
    'Over the maximum1',
  ]);
  await sheet.getByText('Who lost time, 2 times').click();
  await sheet.getByRole('row', { name: /^1.*TC1.*4 min.*4 min.*4 min/ }).waitFor();
  await expectAccessible(page, 'times-controls-desk');
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize(PHONE);
  await expectAccessible(page, 'times-controls-phone-dark');
  await page.goto(`/organiser/failing/?${new URLSearchParams({ organiser: own.organiserId })}`);
  const over = page.getByRole('region', { name: 'Late at the other controls' });
  await over.getByText('from event to event: needs a second event.', { exact: false }).waitFor();
  await over.getByText('4 of 11, 36 %', { exact: false }).waitFor();
  await expectAccessible(page, 'times-controls-events-phone-dark');
});

it('replaces times as a whole and never unseen', async () => {
  const { organiser, own } = await publishAndTakeOver(house);
  const save = (source: string, replaces: number | null, maxLateMinutes = 15) =>
    organiser.timeList.save({ ...own, source, maxLateMinutes, replaces });
  expect(await save(`${HEAD}\n1,TC99,9:35,9:35`, null)).toMatchObject({
    ok: false,
    problems: [{ row: 2, column: 2 }],
  });
  const first = await save(LIST, null);
  expect(first).toMatchObject({ ok: true, times: 8 });
  expect(await save(LIST, null)).toEqual(first);
  await expect(save(`${HEAD}\n1,TC2A,9:35,9:35`, null)).rejects.toThrow(/Someone saved another list/);
  // Another maximum alone is another list.
  await expect(save(LIST, null, 10)).rejects.toThrow(/Someone saved another list/);
  const savedAt = (await organiser.timeList.get(own)).saved?.savedAt ?? 0;
  expect(await save(LIST, savedAt, 10)).toMatchObject({ ok: true });
  expect((await organiser.timeList.get(own)).saved?.maxLateMinutes).toBe(10);
});

it('tells lateness over the events, of all cars or of one class', async () => {
  const { organiser, own } = await publishAndTakeOver(house);
  const { organiserId } = own;
  await organiser.timeList.save({ ...own, source: LIST, maxLateMinutes: 15, replaces: null });
  const of = async (className: string | null) => {
    const { events, trend, controlTrend } = await organiser.timeList.figures({ organiserId, className });
    const controls = events[0]?.controls;
    const atControls = [controls?.cars, controlTrend.ok, ...(controls?.controls ?? [])];
    return { trend, all: events[0]?.lateness.all, cars: events[0]?.lateness.cars, atControls };
  };
  expect(await of(null)).toMatchObject({
    trend: { ok: false, reason: 'tooFewEvents' },
    all: { leaves: 5, late: { count: 3, medianMinutes: 6, worstMinutes: 17 }, beyond: { count: 1 } },
    cars: { had: 2, of: 3 },
    // At the way into Service A alone, as that into B is on no row: car 2 came 6 late.
    atControls: [
      { had: 1, of: 3 },
      false,
      { controlId: 'TC2A', arrivals: 3, late: { count: 1, worstMinutes: 6 }, lost: { notKnown: 1 } },
    ],
  });
  const field = 'Car,Class,What happened\n1,R,finished\n2,N,finished\n3,N,finished';
  await organiser.retirement.save({ ...own, source: field, replaces: null });
  expect(await of('R')).toMatchObject({
    all: { leaves: 2, late: { count: 2 } },
    cars: { had: 1, of: 1 },
    atControls: [{ had: 0, of: 1 }, false, { arrivals: 1 }],
  });
  expect(await of('n')).toMatchObject({ all: { leaves: 3, late: { count: 1 } }, cars: { had: 1, of: 2 } });
  const figures = await organiser.retirement.figures({ organiserId, className: 'N' });
  expect(figures).toMatchObject({ classes: ['N', 'R'], events: [{ cars: { starters: 2, finished: 2 } }] });
});

it('tells whether more cars come late to their controls from event to event, apart from their services', async () => {
  const { organiser, own } = await publishAndTakeOver(house);
  const { organiserId } = own;
  const name = 'Larchwater Stages again';
  const later = {
    organiserId,
    publishedEventId: null,
    name,
    itinerary: { ...ITINERARY, startsOn: '2026-07-11' },
  };
  const saved = await organiser.organiser.saveEvent(later);
  if (!saved.ok) throw new Error('The fixture itinerary has a problem.');
  const again = { organiserId, publishedEventId: saved.publishedEventId };
  await organiser.organiser.publish(again);
  /** Twelve cars at TC1, of which the first `late` came a minute late. */
  const source = (late: number) =>
    [
      'Car,Control,Late',
      ...Array.from({ length: 12 }, (_, car) => `${car + 1},TC1,${car < late ? 1 : 0}`),
    ].join('\n');
  await organiser.timeList.save({ ...own, source: source(1), maxLateMinutes: 15, replaces: null });
  await organiser.timeList.save({ ...again, source: source(9), maxLateMinutes: 15, replaces: null });
  const { events, trend, controlTrend } = await organiser.timeList.figures({ organiserId, className: null });
  expect(events.map(({ controls }) => controls.cars)).toEqual([
    { had: 1, of: 12 },
    { had: 9, of: 12 },
  ]);
  // By hand, 10 late of 24: 12 × (9/12 − 5/12) = 4 over √(5/12 × 7/12 × 6) = 1.2076 is 3.31.
  expect(controlTrend).toMatchObject({
    ok: true,
    direction: 'worsening',
    statistic: expect.closeTo(3.31, 2),
  });
  expect(trend).toMatchObject({ ok: false, reason: 'tooFewEvents' });
});
