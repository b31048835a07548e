import { expect, it } from 'vitest';
import { foundTeamAtEvent } from '../support/event';
import { PASSWORD } from '../support/house';
import { keepHouse } from '../support/keep-house';

const house = keepHouse();

it('a helper who makes an account keeps the team, the person and the event', async () => {
  const team = await foundTeamAtEvent(house);
  const { teamId, eventId } = team;
  const { token } = await team.caller.invite.create({ teamId, role: 'mechanic', eventId, days: 1 });
  const helper = await post('/auth/sign-in/anonymous', {}, '');
  const joined = await call('invite.accept', { token, name: 'Pat Moor' }, helper.cookie);
  expect(joined).toMatchObject({ result: { data: { teamId, eventId } } });

  const account = await post(
    '/auth/sign-up/email',
    { name: 'Pat Moor', email: 'pat@test.example', password: PASSWORD },
    helper.cookie,
  );
  const mine = await fetch(`${house.url}/trpc/team.mine`, { headers: { cookie: account.cookie } });
  expect(await mine.json()).toMatchObject({
    result: { data: { teams: [{ teamId, role: 'mechanic', eventId }] } },
  });
  const people = await team.caller.people.list({ teamId });
  expect(people.filter((person) => person.name === 'Pat Moor')).toHaveLength(1);
});

async function post(path: string, body: object, cookie: string) {
  const response = await fetch(house.url + path, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie, origin: house.url },
    body: JSON.stringify(body),
  });
  expect(response.status).toBe(200);
  const set = response.headers.getSetCookie().map((each) => each.split(';')[0]);
  return { cookie: set.join('; ') };
}

async function call(procedure: string, input: object, cookie: string): Promise<unknown> {
  const response = await fetch(`${house.url}/trpc/${procedure}`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', cookie, origin: house.url },
    body: JSON.stringify(input),
  });
  return response.json();
}
