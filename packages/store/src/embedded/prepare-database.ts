import pg from 'pg';
import { applyMigrations } from '../migrate/apply';
import { ensureLogins, type Logins } from '../migrate/logins';

/** The three addresses of one database. */
export interface DatabaseUrls {
  ownerUrl: string;
  appUrl: string;
  authUrl: string;
}

/** Makes the database if it is missing, applies what is missing of the migrations, and lets the two logins in. */
export async function prepareDatabase(adminUrl: string, name: string, logins: Logins): Promise<DatabaseUrls> {
  await createIfMissing(adminUrl, name);
  const ownerUrl = withDatabase(adminUrl, name);
  await applyMigrations(ownerUrl);
  await ensureLogins(ownerUrl, logins);
  return urlsOf(adminUrl, name, logins);
}

export function urlsOf(adminUrl: string, name: string, logins: Logins): DatabaseUrls {
  const ownerUrl = withDatabase(adminUrl, name);
  return {
    ownerUrl,
    appUrl: withLogin(ownerUrl, 'halfshaft_app', logins.appPassword),
    authUrl: withLogin(ownerUrl, 'halfshaft_auth', logins.authPassword),
  };
}

async function createIfMissing(adminUrl: string, name: string): Promise<void> {
  const client = new pg.Client({ connectionString: adminUrl });
  await client.connect();
  try {
    const found = await client.query('SELECT FROM pg_database WHERE datname = $1', [name]);
    if (found.rowCount === 0) await client.query(`CREATE DATABASE ${client.escapeIdentifier(name)}`);
  } finally {
    await client.end();
  }
}

function withDatabase(url: string, name: string): string {
  const parsed = new URL(url);
  parsed.pathname = `/${name}`;
  return parsed.href;
}

export function withLogin(url: string, user: string, password: string): string {
  const parsed = new URL(url);
  parsed.username = user;
  parsed.password = password;
  return parsed.href;
}
