import pg from 'pg';

/** Passwords of the two logins that own nothing. */
export interface Logins {
  appPassword: string;
  authPassword: string;
}

/**
 * Lets the two roles made by the migrations sign in with these passwords. Run as the owner after `applyMigrations`;
 * whoever manages the database by hand may do the same with two ALTER ROLE statements instead.
 */
export async function ensureLogins(ownerUrl: string, logins: Logins): Promise<void> {
  const client = new pg.Client({ connectionString: ownerUrl });
  await client.connect();
  try {
    for (const [role, password] of [
      ['halfshaft_app', logins.appPassword],
      ['halfshaft_auth', logins.authPassword],
    ] as const) {
      await client.query(`ALTER ROLE ${role} LOGIN PASSWORD ${client.escapeLiteral(password)}`);
    }
  } finally {
    await client.end();
  }
}
