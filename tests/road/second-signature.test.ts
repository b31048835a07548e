import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { foundTeamAtEvent, makeAction, taskRef } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const house = keepHouse({ pages: PAGES });

it.each(['light', 'dark'] as const)(
  'takes the second signature of a person without an account on the same phone (%s)',
  async (colorScheme) => {
    const team = await foundTeamAtEvent(house, 'Signed');
    const { caller, teamId, eventId, entryId, carId } = team;
    const { personId: ida } = await caller.people.add({ teamId, name: 'Ida Fell' });
    const cards = await caller.card.list({ teamId, carId });
    const card = cards.find(({ needsSignature }) => needsSignature);
    if (!card) throw new Error('No starter card asks for a second signature.');
    const task = taskRef(entryId, card.id);
    const done = makeAction({ kind: 'closeTask', args: { task, findings: [], readings: [] } }, team.personId);
    await caller.work.push({ teamId, eventId, actions: [done] });

    const { page } = await openPage({ ...PHONE, colorScheme, baseUrl: house.url, cookie: team.cookie });
    await page.goto(`/bay/?${new URLSearchParams({ team: teamId, event: eventId, car: entryId, at: 'A' })}`);
    await page.getByRole('button', { name: 'Another signs here' }).click();
    const sheet = page.getByRole('dialog');
    const finish = sheet.getByRole('button', { name: 'I checked it' });
    await finish.click();
    await sheet.getByText('Choose who checked it.').waitFor();
    // Whoever did the work is no choice.
    expect(await sheet.getByRole('option').allTextContents()).toEqual(['Choose a person', 'Ida Fell']);
    await sheet.getByLabel('Who checked it?').selectOption({ label: 'Ida Fell' });
    await sheet.getByLabel('Your initials').fill('SF');
    await sheet.getByText('These are not the initials of Ida Fell.').waitFor();
    await expectAccessible(page, `sign-here-360-${colorScheme}`);
    await sheet.getByLabel('Your initials').fill('i.f.');
    await finish.click();
    await sheet.waitFor({ state: 'hidden' });

    const last = async () => (await caller.work.pull({ teamId, eventId, since: 0 })).entries.at(-1);
    await expect
      .poll(last)
      .toMatchObject({ by: ida, enteredBy: team.personId, body: { kind: 'signed', byInitials: true } });
    await page.goto(`/log/?${new URLSearchParams({ team: teamId, event: eventId })}`);
    const line = page.getByRole('listitem').filter({ hasText: /Ida Fell signed .*, by initials\./ });
    await line.getByText('entered by Signed Founder').waitFor();
  },
);
