import { join } from 'node:path';
import { type DatabaseUrls, prepareDatabase, startEmbedded, withLogin } from '@halfshaft/store/embedded';
import { applyMigrations, ensureLogins } from '@halfshaft/store/migrate';
import { HOME_FOLDER, type Secrets } from './home-folder';

export interface RunningDatabase extends DatabaseUrls {
  stop(): Promise<void>;
}

/** The database of DATABASE_URL when that is set, else our own in the home folder; migrated, with its two logins. */
export async function openDatabase(secrets: Secrets): Promise<RunningDatabase> {
  const logins = { appPassword: secrets.appPassword, authPassword: secrets.authPassword };
  const ownerUrl = process.env.DATABASE_URL;
  if (ownerUrl) {
    await applyMigrations(ownerUrl);
    await ensureLogins(ownerUrl, logins);
    return {
      ownerUrl,
      appUrl: withLogin(ownerUrl, 'halfshaft_app', logins.appPassword),
      authUrl: withLogin(ownerUrl, 'halfshaft_auth', logins.authPassword),
      stop: async () => {},
    };
  }
  const folder = join(HOME_FOLDER, 'database');
  const server = await startEmbedded({ folder, password: secrets.ownerPassword, durable: true });
  try {
    return { ...(await prepareDatabase(server.adminUrl, 'halfshaft', logins)), stop: server.stop };
  } catch (error) {
    await server.stop();
    throw error;
  }
}
