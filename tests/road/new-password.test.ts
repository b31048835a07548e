import { expect, it } from 'vitest';
import { expectAccessible, openPage } from '../browser/chromium';
import { joinTeam } from '../fence/world';
import { keepHouse } from '../support/keep-house';
import { PAGES, PHONE } from '../support/screens';

const NEW_PASSWORD = 'four other words in a row';

const house = keepHouse({ pages: PAGES });

it.each(['light', 'dark'] as const)(
  'lets a member who forgot the password set a new one by a link from an admin (%s)',
  async (colorScheme) => {
    const founder = await house.signUp('Ada Admin');
    const admin = { caller: house.callAs(founder.userId) };
    const { teamId } = await admin.caller.team.create({ name: 'Team', personName: 'Ada Admin' });
    const signedUp = await house.signUp('Mo Member');
    const member = { ...signedUp, caller: house.callAs(signedUp.userId) };
    await joinTeam(house, admin, teamId, { role: 'mechanic', forEvent: null }, member);
    const screen = { ...PHONE, colorScheme, baseUrl: house.url };

    const { page: people } = await openPage({ ...screen, cookie: founder.cookie });
    await people.goto(`/people/?${new URLSearchParams({ team: teamId })}`);
    await people.getByRole('button', { name: 'New password for The mechanic' }).click();
    const dialog = people.getByRole('dialog');
    await dialog.getByRole('button', { name: 'Make the link' }).click();
    const link = await dialog.getByLabel('Link', { exact: true }).inputValue();
    await expectAccessible(people, `password-link-360-${colorScheme}`);

    const { page: phone } = await openPage({ ...screen, expected: [/400/] });
    await phone.goto(link);
    const field = phone.getByLabel('New password');
    const finish = phone.getByRole('button', { name: 'Set the new password' });
    await field.fill('short');
    await finish.click();
    await phone.getByText('The password is too short. Use at least 10 characters.').waitFor();
    await field.fill(NEW_PASSWORD);
    await expectAccessible(phone, `new-password-360-${colorScheme}`);
    await finish.click();
    await phone.getByText('Your new password counts from now on.').waitFor();

    await phone.reload();
    await field.fill('a password of somebody else');
    await finish.click();
    await phone.getByText('This link was used already, or it has run out.').waitFor();

    await phone.goto('/sign-in/');
    await phone.getByLabel('E-mail').fill(member.email);
    await phone.getByLabel('Password').fill(NEW_PASSWORD);
    await phone.getByRole('button', { name: 'Sign in' }).click();
    await phone.waitForURL(/\/home\//);
    await phone.getByText('Team', { exact: true }).first().waitFor();
    expect(await house.callAs(member.userId).team.mine()).toMatchObject({ teams: [{ teamId }] });
  },
);
