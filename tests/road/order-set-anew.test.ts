import { dueAt, formatClock, positionsOf, servicesOf } from '@halfshaft/itinerary';
import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';

const FIRST = 7;
const AFTER_REGROUP = 3;

const house = keepHouse({ pages: PAGES });

it('times the services after a regroup by the position set there', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId, entryId } = team;
  const { itinerary } = await team.caller.event.get({ teamId, eventId });
  const services = servicesOf(itinerary);
  const last = services.at(-1);
  const section = last?.section ?? 0;
  expect(section).toBeGreaterThan(1);
  const clock = (index: number, set: Record<string, number>) => {
    const positions = positionsOf({ startPosition: FIRST, positionsBySection: set });
    return formatClock(dueAt(itinerary, index, positions), itinerary.timeZone);
  };
  const inIndex = last?.inIndex ?? 0;
  const set = { [section]: AFTER_REGROUP };
  expect(clock(inIndex, set)).not.toBe(clock(inIndex, {}));

  const { page } = await openPage({ width: 360, height: 740, baseUrl: house.url, cookie: team.cookie });
  await page.goto(`/event/?${new URLSearchParams({ team: teamId, event: eventId })}`);
  await page.getByText(`Start position ${FIRST}, 2 people at service`).waitFor();
  await page.getByRole('button', { name: 'Change car 7 at this event' }).click();
  await page.getByText('Start position changes after a regroup').click();
  const box = page.getByLabel(`Start position from Section ${section} on`);
  await box.fill('none');
  await page.getByRole('button', { name: 'Save' }).click();
  await page.getByText('The start position must be a whole number from 1 to 300.').waitFor();
  await expectAccessible(page, 'order-set-anew-refused');
  await box.fill(String(AFTER_REGROUP));
  await page.getByRole('button', { name: 'Save' }).click();
  await page
    .getByText(`Start position ${FIRST}, then ${AFTER_REGROUP} from Section ${section} on, 2 people`)
    .waitFor();
  await expectAccessible(page, 'order-set-anew');

  await page.setViewportSize({ width: 1440, height: 900 });
  await page.emulateMedia({ colorScheme: 'dark' });
  await page.getByRole('button', { name: 'Change car 7 at this event' }).click();
  // What is set stands open at once.
  await box.waitFor();
  expect(await box.inputValue()).toBe(String(AFTER_REGROUP));
  await expectAccessible(page, 'order-set-anew-wide-dark');

  const saved = await team.caller.event.get({ teamId, eventId });
  expect(saved.entries[0]?.positionsBySection).toEqual(set);
  await page.goto(
    `/service/?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: last?.id ?? '' })}`,
  );
  await page.getByText(`planned in ${clock(inIndex, set)} at ${last?.inControl}`).waitFor();
  await page.getByText(`start position ${AFTER_REGROUP}`, { exact: false }).first().waitFor();

  // A phone with an older form says nothing of later sections: they stay as they are.
  await team.caller.event.updateEntry({ teamId, entryId, carNumber: '7', startPosition: FIRST, people: 3 });
  const kept = await team.caller.event.get({ teamId, eventId });
  expect(kept.entries[0]).toMatchObject({ people: 3, positionsBySection: set });
});
