import pg from 'pg';
import { beforeAll, expect, inject, it } from 'vitest';
import { foundTeamAtEvent, joinTeam, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { openLiveStream } from './live-stream';
import { askOwner } from './table-hashes';

const SENTENCE = 'Something went wrong on our side. Nothing was changed. Try again in a moment.';

const house = keepHouse();
let team: TeamAtEvent;
let cookie: string;
beforeAll(async () => {
  team = await foundTeamAtEvent(house);
  cookie = (await joinTeam(house, team, 'Mia')).cookie;
});

function addressOf({ teamId, eventId }: TeamAtEvent): string {
  return `${house.url}/live?team=${teamId}&event=${eventId}`;
}

/** From another database of the same server: nobody may shut the one they stand in. */
async function askAdmin(...statements: string[]): Promise<void> {
  const client = new pg.Client({ connectionString: inject('adminUrl') });
  await client.connect();
  try {
    for (const statement of statements) await client.query(statement);
  } finally {
    await client.end();
  }
}

/** Watching works, so that what follows is not refused for some other reason. */
async function expectToWatch(): Promise<void> {
  const stream = await openLiveStream(addressOf(team), cookie);
  expect(await stream.next()).toBe('data: 0');
  stream.close();
}

async function expectTrouble(): Promise<void> {
  const answer = await fetch(addressOf(team), { headers: { cookie } });
  expect(answer.status).toBe(503);
  expect(await answer.json()).toEqual({ message: SENTENCE });
}

it('tells a phone that watches to come again, not that its event is gone, while the database is away', async () => {
  await expectToWatch();
  const name = new URL(house.database.appUrl).pathname.slice(1);
  await askAdmin(
    `ALTER DATABASE ${name} ALLOW_CONNECTIONS false`,
    `SELECT pg_terminate_backend(pid) FROM pg_stat_activity WHERE datname = '${name}'`,
  );
  try {
    await expectTrouble();
  } finally {
    await askAdmin(`ALTER DATABASE ${name} ALLOW_CONNECTIONS true`);
  }
  await expectToWatch();
});

it('says the same when the session is known and only the team cannot be looked up', async () => {
  await askOwner(house.database, 'REVOKE SELECT ON membership FROM halfshaft_app');
  try {
    await expectTrouble();
  } finally {
    await askOwner(house.database, 'GRANT SELECT ON membership TO halfshaft_app');
  }
  await expectToWatch();
});
