import { randomBytes } from 'node:crypto';
import { chmod, mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import pg from 'pg';
import { type RunningServer, startEmbedded } from './embedded-server';
import { type DatabaseUrls, prepareDatabase, urlsOf } from './prepare-database';

const LOGINS = { appPassword: 'app-in-tests', authPassword: 'auth-in-tests' };
const TEMPLATE = 'halfshaft_template';

export interface TestDatabase extends DatabaseUrls {
  drop(): Promise<void>;
}

/**
 * A server for tests with a migrated template: the one of DATABASE_URL when set, else a container when an engine
 * answers, else the embedded one.
 */
export async function startTestServer(): Promise<RunningServer> {
  const server = await chooseServer();
  await prepareDatabase(server.adminUrl, TEMPLATE, LOGINS);
  return server;
}

async function chooseServer(): Promise<RunningServer> {
  const given = process.env.DATABASE_URL;
  if (given) return { adminUrl: given, stop: async () => {} };
  return (await startContainer()) ?? startThrowAway();
}

async function startContainer(): Promise<RunningServer | null> {
  try {
    const { getContainerRuntimeClient } = await import('testcontainers');
    await getContainerRuntimeClient();
  } catch {
    return null; // no engine answers here: the embedded server does the same work
  }
  const { PostgreSqlContainer } = await import('@testcontainers/postgresql');
  const container = await new PostgreSqlContainer('postgres:18-alpine').start();
  return { adminUrl: container.getConnectionUri(), stop: async () => void (await container.stop()) };
}

async function startThrowAway(): Promise<RunningServer> {
  const folder = await mkdtemp(join(tmpdir(), 'halfshaft-test-'));
  await chmod(folder, 0o755); // the database runs as another user when we are root
  const server = await startEmbedded({ folder: join(folder, 'data'), password: 'tests', durable: false });
  return {
    adminUrl: server.adminUrl,
    async stop() {
      await server.stop();
      await rm(folder, { recursive: true, force: true });
    },
  };
}

/** A fresh copy of the migrated template, in a few dozen milliseconds. */
export async function cloneDatabase(adminUrl: string): Promise<TestDatabase> {
  const name = `halfshaft_${randomBytes(6).toString('hex')}`;
  await runAsAdmin(adminUrl, `CREATE DATABASE ${name} TEMPLATE ${TEMPLATE}`);
  return {
    ...urlsOf(adminUrl, name, LOGINS),
    drop: () => runAsAdmin(adminUrl, `DROP DATABASE IF EXISTS ${name} WITH (FORCE)`),
  };
}

async function runAsAdmin(adminUrl: string, sql: string): Promise<void> {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  try {
    await client.query(sql);
  } finally {
    await client.end();
  }
}
