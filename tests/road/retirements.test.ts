import { resolve } from 'node:path';
import { expect, it } from 'vitest';
import { expectAccessible, openPage, screenshot } from '../browser/chromium';
import { amended, publishAndTakeOver } from '../support/bulletin';
import { ITINERARY } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { DESK, PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

const HEAD = 'Car\tClass\tWhat happened\tWhere\tCause\tPart\tWho says so\tBack from section';
const FINISHED = Array.from({ length: 8 }, (_, index) => `${index + 1}\tR\tfinished`);
const listOf = (...rows: string[]) => [HEAD, ...rows].join('\n');
const LIST = listOf(
  ...FINISHED,
  '14\tN\tout\tin SS5\tmechanical\tgearbox\tcrew',
  '15\tN\tout\tafter SS2\toff road\t\tofficial',
  '16\tN\tout for the day\tin SS3\tmechanical\tHalf shaft\t\t3',
  '16\tN\tout\tafter SS8\twithdrawn',
  '17\t\tdid not start',
);

it('goes from the organiser’s box to what stops cars', async () => {
  const { organiser, organiserCookie, own } = await publishAndTakeOver(house);
  await organiser.startList.save({ ...own, section: 1, source: '7 1\n14 2' });
  const page = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  const query = `?${new URLSearchParams({ organiser: own.organiserId, event: own.publishedEventId })}`;
  await page.goto(`/organiser/${query}`);
  await page.getByRole('link', { name: 'Who stopped, and why' }).click();
  await page.getByText('Nothing is saved for this event yet.', { exact: false }).waitFor();
  await expectAccessible(page, 'retirements-empty');

  const box = page.getByLabel('Who started, who stopped, where and why');
  const save = page.getByRole('button', { name: 'Save the list' });
  await page.getByRole('button', { name: 'Begin with the start list, all finished' }).click();
  expect((await box.inputValue()).split('\n')).toEqual([
    HEAD,
    '7\t\tfinished\t\t\t\t\t',
    '14\t\tfinished\t\t\t\t\t',
  ]);
  const typed = listOf('1\tR\tfinished', '14\tN\tout\tSS5\tbad luck');
  await box.fill(typed);
  await save.click();
  await page.getByText('“SS5” may mean in the stage or after it.', { exact: false }).waitFor();
  await page.getByText('“bad luck” is no cause here.', { exact: false }).waitFor();
  expect(await box.inputValue()).toBe(typed);
  await expectAccessible(page, 'retirements-problems');

  await box.fill(LIST);
  await save.click();
  await page.getByText('12 cars are on the list.').waitFor();
  await page.getByText('11 cars started: 8 finished, 3 out.', { exact: false }).waitFor();
  await page.getByText('1 car withdrew by choice, which counts as no failure.', { exact: false }).waitFor();
  await page.getByText('Finished without a stop: 1, 2, 3, 4, 5, 6, 7, 8.').waitFor();
  await page.getByText('What broke: gearbox 1, half shaft 1.').waitFor();
  const row = page.getByRole('row', { name: /^Mechanical/ }).first();
  expect(await row.getByRole('cell').allInnerTexts()).toContain('2');

  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Download the list' }).click(),
  ]);
  expect(download.suggestedFilename()).toBe('Larchwater Stages retirements.csv');
  await page.reload();
  await page.getByText('by you.', { exact: false }).waitFor();
  await expectAccessible(page, 'retirements-saved-desk');
  await page.emulateMedia({ colorScheme: 'dark' });
  await expectAccessible(page, 'retirements-saved-desk-dark');
  await page.setViewportSize(PHONE);
  await expectAccessible(page, 'retirements-saved-phone-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  await expectAccessible(page, 'retirements-saved-phone');
  await page.pdf({
    path: resolve(import.meta.dirname, '../screenshots/retirements.pdf'),
    preferCSSPageSize: true,
  });
  await page.emulateMedia({ media: 'print' });
  expect(await box.isVisible()).toBe(false);
  expect(await page.getByRole('heading', { name: 'The cars', exact: true }).isVisible()).toBe(true);
  await page.setViewportSize({ width: 794, height: 1123 });
  await screenshot(page, 'retirements-print');
});

it('shows what keeps failing over the events', async () => {
  const { organiser, organiserCookie, own } = await publishAndTakeOver(house);
  const page = (await openPage({ ...DESK, baseUrl: house.url, cookie: organiserCookie })).page;
  await page.goto(`/organiser/failing/?${new URLSearchParams({ organiser: own.organiserId })}`);
  await page.getByText('No event with a list yet').waitFor();

  // Seven of ten cars stopped at the first event, none at the second one a year later.
  const stopped = Array.from(
    { length: 7 },
    (_, index) => `${index + 20}\t\tout\tafter SS8\tmechanical\tgearbox\tcrew`,
  );
  await organiser.retirement.save({
    ...own,
    source: listOf(...FINISHED.slice(0, 3), ...stopped),
    replaces: null,
  });
  await page.reload();
  await page.getByText('1 event').first().waitFor();
  await page.getByText('From event to event: needs a second event.').waitFor();

  const { organiserId } = own;
  const later = { ...ITINERARY, startsOn: '2027-06-12' };
  const event = { organiserId, publishedEventId: null, name: 'Larchwater Stages again', itinerary: later };
  const saved = await organiser.organiser.saveEvent(event);
  if (!saved.ok) throw new Error('The fixture itinerary has a problem.');
  const { publishedEventId } = saved;
  await organiser.organiser.publish({ organiserId, publishedEventId });
  await organiser.retirement.save({
    organiserId,
    publishedEventId,
    source: listOf(...FINISHED),
    replaces: null,
  });
  await page.reload();
  await page.getByText('2 events').first().waitFor();
  await page.getByText('From event to event: falling', { exact: false }).waitFor();
  // The drawing names each curve and says in words what it shows; its table and every figure open on a tap.
  const drawing = page.getByRole('img', { name: /^Of 18 cars, the share stopped by each cause/ });
  expect(await drawing.locator('text').allTextContents()).toContain('Mechanical39 %');
  await expectAccessible(page, 'failing-desk');
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.setViewportSize(PHONE);
  await expectAccessible(page, 'failing-phone-dark');
  await page.emulateMedia({ colorScheme: 'light' });
  await expectAccessible(page, 'failing-phone');
  const table = page.getByRole('table', { name: 'Every figure by cause' });
  expect(await table.isVisible()).toBe(false);
  await page.getByText('Every figure, and how to read it').click();
  await table.getByText('too few to tell').first().waitFor();
  await page.getByText('The shares as a table').click();
  await page.getByRole('table', { name: 'Share stopped along the stages' }).waitFor();
  await expectAccessible(page, 'failing-phone-open');

  await page.getByLabel('Class').selectOption('R');
  await page.getByRole('heading', { name: 'What keeps failing, class R' }).waitFor();
  await page.getByText('Nothing stopped a car so far.').waitFor();
  await page.getByLabel('Class').selectOption({ label: 'All cars' });
  await page.getByRole('heading', { name: 'What keeps failing', exact: true }).waitFor();
  await page.getByRole('link', { name: 'Larchwater Stages again' }).click();
  await page.getByText('8 cars started: 8 finished.').waitFor();
});

it('replaces a list as a whole, never unseen, and goes by the itinerary that holds', async () => {
  const { organiser, own, issue } = await publishAndTakeOver(house);
  const save = (source: string, replaces: number | null) =>
    organiser.retirement.save({ ...own, source, replaces });
  const savedOf = async () => (await organiser.retirement.get(own)).saved;
  expect(await save(listOf('7\t\tvanished'), null)).toMatchObject({
    ok: false,
    problems: [{ row: 2, column: 3 }],
  });
  expect(await savedOf()).toBeNull();
  const first = await save(LIST, null);
  expect(first).toMatchObject({ ok: true, cars: 12 });
  const savedAt = (await savedOf())?.savedAt ?? 0;
  // The same again, as when the answer was lost on the way.
  expect(await save(LIST, null)).toEqual(first);
  await expect(save(listOf('1\t\tfinished'), savedAt - 1)).rejects.toThrow(/Someone saved another list/);
  expect((await savedOf())?.source).toBe(LIST);

  // By hand: all mechanical and off-road stops count, who withdrew does not; km as far as each was driven.
  const metresBefore = new Map<string, number>();
  let metres = 0;
  const { itinerary } = await organiser.retirement.get(own);
  for (const point of itinerary.points) {
    metresBefore.set(point.id, metres);
    if (point.kind === 'stage') metres += point.stageMetres;
  }
  const lengthOf = (id: string) =>
    itinerary.points.flatMap((point) =>
      point.id === id && point.kind === 'stage' ? [point.stageMetres] : [],
    )[0] ?? 0;
  const before = (id: string) => metresBefore.get(id) ?? 0;
  const section3 = itinerary.points.find(({ section }) => section === 3)?.id ?? '';
  const driven =
    8 * metres +
    (before('SS5') + lengthOf('SS5') / 2) +
    (before('SS2') + lengthOf('SS2')) +
    (before('SS3') + lengthOf('SS3') / 2) +
    (before('SS8') + lengthOf('SS8') - before(section3));
  const rates = (await savedOf())?.figures.rates;
  expect(rates?.distance).toBeCloseTo(driven / 1000, 6);
  expect(rates?.all).toMatchObject({ stops: 3, unsure: 1 });
  expect(rates?.causes.map(({ cause, stops }) => [cause, stops])).toEqual([
    ['mechanical', 2],
    ['offRoad', 1],
    ['time', 0],
    ['other', 0],
  ]);

  // A bulletin takes SS5 out: the car that stopped in it is named and in no figure.
  await issue(amended());
  const after = await savedOf();
  expect(after?.field).toMatchObject({ leftOut: ['14'], cars: { starters: 10, out: 2 } });
  expect(after?.figures.rates.all.stops).toBe(2);

  expect(await save(listOf('1\t\tfinished'), savedAt)).toMatchObject({ ok: true, cars: 1 });
  expect(
    (await organiser.retirement.figures({ organiserId: own.organiserId, className: null })).events,
  ).toMatchObject([{ cars: { starters: 1, finished: 1 }, leftOut: [] }]);
});

it('refuses to replace unseen what another saved, keeps the typing, and takes it once the other list was seen', async () => {
  const { organiser, organiserCookie, own } = await publishAndTakeOver(house);
  const { page } = await openPage({
    ...PHONE,
    baseUrl: house.url,
    cookie: organiserCookie,
    tolerated: [/409/],
  });
  const query = { organiser: own.organiserId, event: own.publishedEventId };
  await page.goto(`/organiser/retirements/?${new URLSearchParams(query)}`);
  const box = page.getByLabel('Who started, who stopped, where and why');
  const mine = listOf('1\tR\tfinished', '2\tR\tfinished');
  await box.fill(mine);
  await organiser.retirement.save({ ...own, source: LIST, replaces: null });
  await page.getByRole('button', { name: 'Save the list' }).click();
  await page.getByText('Someone saved another list for this event', { exact: false }).waitFor();
  expect(await box.inputValue()).toBe(mine);
  expect((await organiser.retirement.get(own)).saved?.source).toBe(LIST);
  await page.reload();
  await page.getByText('11 cars started: 8 finished, 3 out.', { exact: false }).waitFor();
  await page.getByText('What you typed earlier is back').waitFor();
  expect(await box.inputValue()).toBe(mine);
  await page.getByRole('button', { name: 'Save the list' }).click();
  await page.getByText('2 cars are on the list.').waitFor();
  expect((await organiser.retirement.get(own)).saved?.source).toBe(mine);
});

it('has no list for an event that is not published', async () => {
  const { organiser, own } = await publishAndTakeOver(house);
  const { organiserId } = own;
  const draft = { organiserId, publishedEventId: null, name: 'Draft', itinerary: ITINERARY };
  const saved = await organiser.organiser.saveEvent(draft);
  if (!saved.ok) throw new Error('The fixture itinerary has a problem.');
  const { publishedEventId } = saved;
  await expect(organiser.retirement.get({ organiserId, publishedEventId })).rejects.toThrow(/does not exist/);
});
