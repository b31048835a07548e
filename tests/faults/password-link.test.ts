import pg from 'pg';
import { describe, expect, it } from 'vitest';
import { ask } from '../fence/answer';
import { joinTeam } from '../fence/world';
import { type Caller, PASSWORD } from '../support/house';
import { keepHouse } from '../support/keep-house';

const NEW_PASSWORD = 'four other words in a row';
const TWO_HOURS = 2 * 3_600_000;

const house = keepHouse();

describe('a link for a member who forgot the password', () => {
  it('sets a new one once, ends all sessions of the account, and no old password signs in', async () => {
    const { member, link } = await foundTeamWithLink();
    expect(await sessionOf(member.cookie)).not.toBeNull();
    expect(await useLink(link, NEW_PASSWORD)).toBe(200);
    expect(await sessionOf(member.cookie)).toBeNull();
    expect(await signIn(member.email, PASSWORD)).toBe(401);
    expect(await signIn(member.email, NEW_PASSWORD)).toBe(200);
    expect(await useLink(link, 'yet another long password')).toBe(400);
    expect(await signIn(member.email, NEW_PASSWORD)).toBe(200);
  });

  it('works for one of many who use it at once', async () => {
    const { link } = await foundTeamWithLink();
    const codes = await Promise.all([1, 2, 3].map((nth) => useLink(link, `${NEW_PASSWORD} ${nth}`)));
    expect(codes.sort()).toEqual([200, 400, 400]);
  });

  it('is kept as a hash, ends when another is made, and runs out', async () => {
    const { admin, teamId, member, membershipId, link } = await foundTeamWithLink();
    const kept = JSON.stringify(await readLinks());
    expect(kept).toContain(member.userId);
    expect(kept).not.toContain(link.split('.')[0]);
    const second = await admin.caller.password.makeLink({ teamId, membershipId });
    expect(await useLink(link, NEW_PASSWORD)).toBe(400);
    house.clock.set(Date.now() - TWO_HOURS - 1000);
    const old = await admin.caller.password.makeLink({ teamId, membershipId });
    house.clock.set(Date.now());
    expect(await useLink(second.token, NEW_PASSWORD)).toBe(400);
    expect(await useLink(old.token, NEW_PASSWORD)).toBe(400);
  });
});

describe('no link', () => {
  it('for an account that belongs to another team or to an organiser, also if it was taken out there', async () => {
    const { admin, teamId, membershipId, member } = await foundTeamWithLink();
    const club = await foundTeamWithLink();
    await club.member.caller.organiser.create({ name: 'Club' });
    const ofClub = { teamId: club.teamId, membershipId: club.membershipId };
    expect(await ask(club.admin.caller, 'password.makeLink', ofClub)).toMatchObject(ELSEWHERE);
    expect(await useLink(club.link, NEW_PASSWORD)).toBe(403);

    const other = await foundTeamWithLink();
    const place = { role: 'driver', forEvent: null } as const;
    const { personId } = await joinTeam(house, other.admin, other.teamId, place, member);
    const there = await membershipOf(other, personId);
    await other.admin.caller.people.revoke({ teamId: other.teamId, membershipId: there });
    expect(await ask(admin.caller, 'password.makeLink', { teamId, membershipId })).toMatchObject(ELSEWHERE);
  });

  it('by anyone but an admin, for oneself, or for who came without a password', async () => {
    const { admin, teamId, membershipId, member } = await foundTeamWithLink();
    const answer = await ask(member.caller, 'password.makeLink', { teamId, membershipId });
    expect(answer).toMatchObject({ ok: false, code: 'FORBIDDEN' });
    const own = await membershipOf({ admin, teamId }, admin.personId);
    const forOneself = await ask(admin.caller, 'password.makeLink', { teamId, membershipId: own });
    expect(forOneself).toMatchObject({ ok: false, message: expect.stringContaining('your own account') });
    const { userId } = await house.signInAnonymously();
    const helper = { userId, caller: house.callAs(userId) };
    const { personId } = await joinTeam(house, admin, teamId, { role: 'driver', forEvent: null }, helper);
    const ofHelper = { teamId, membershipId: await membershipOf({ admin, teamId }, personId) };
    const forHelper = await ask(admin.caller, 'password.makeLink', ofHelper);
    expect(forHelper).toMatchObject({ ok: false, message: expect.stringContaining('new invitation') });
  });
});

describe('a link that was made counts no more', () => {
  it('once the account joined another team', async () => {
    const { member, link } = await foundTeamWithLink();
    await member.caller.team.create({ name: 'Own team', personName: 'Founder' });
    expect(await useLink(link, NEW_PASSWORD)).toBe(403);
    expect(await signIn(member.email, PASSWORD)).toBe(200);
  });

  it('once its maker is no admin, or the member was taken out', async () => {
    const first = await foundTeamWithLink();
    const { teamId, admin } = first;
    const makerId = await membershipOf(first, admin.personId);
    await admin.caller.people.setRole({ teamId, membershipId: first.membershipId, role: 'admin' });
    await first.member.caller.people.revoke({ teamId, membershipId: makerId });
    expect(await useLink(first.link, NEW_PASSWORD)).toBe(403);
    const second = await foundTeamWithLink();
    const { membershipId } = second;
    await second.admin.caller.people.revoke({ teamId: second.teamId, membershipId });
    expect(await useLink(second.link, NEW_PASSWORD)).toBe(403);
    expect(await signIn(second.member.email, PASSWORD)).toBe(200);
  });
});

const ELSEWHERE = { ok: false, code: 'FORBIDDEN', message: expect.stringContaining('another team') };

/** A team with an admin and a member, each with an account of their own, and a link for the member. */
async function foundTeamWithLink() {
  const adminId = (await house.signUp('Admin')).userId;
  const caller = house.callAs(adminId);
  const { teamId, personId: founderId } = await caller.team.create({ name: 'Team', personName: 'Admin' });
  const admin = { caller, personId: founderId };
  const signedUp = await house.signUp('Member');
  const member = { ...signedUp, caller: house.callAs(signedUp.userId) };
  const { personId } = await joinTeam(house, admin, teamId, { role: 'mechanic', forEvent: null }, member);
  const membershipId = await membershipOf({ admin, teamId }, personId);
  const { token } = await caller.password.makeLink({ teamId, membershipId });
  return { admin, teamId, member, membershipId, link: token };
}

async function membershipOf(
  { admin, teamId }: { admin: { caller: Caller }; teamId: string },
  personId: string,
): Promise<string> {
  const people = await admin.caller.people.list({ teamId });
  const found = people.find((person) => person.personId === personId)?.membership;
  if (!found) throw new Error('There is no such member.');
  return found.membershipId;
}

async function post(path: string, body: object): Promise<number> {
  await clearCounts();
  const response = await fetch(house.url + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: house.url },
    body: JSON.stringify(body),
  });
  return response.status;
}

const useLink = (token: string, newPassword: string) => post('/auth/reset-password', { token, newPassword });
const signIn = (email: string, password: string) => post('/auth/sign-in/email', { email, password });

async function sessionOf(cookie: string): Promise<unknown> {
  const response = await fetch(`${house.url}/auth/get-session`, { headers: { cookie } });
  return response.json();
}

/** Tries from one address are counted, and these tests make more of them than a person. */
const clearCounts = () => asOwner('DELETE FROM auth."rateLimit"');
const readLinks = () => asOwner('SELECT identifier, value FROM auth.verification');

async function asOwner(statement: string): Promise<unknown[]> {
  const owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
  try {
    return (await owner.query(statement)).rows;
  } finally {
    await owner.end();
  }
}
