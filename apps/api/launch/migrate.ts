import { applyMigrations, ensureLogins } from '@halfshaft/store/migrate';

/**
 * Brings the database of DATABASE_URL (the owner's address) to this version, then lets the two logins in with the
 * passwords of DATABASE_APP_URL and DATABASE_AUTH_URL. Run once before the server of a new version starts; running it again
 * changes nothing.
 */
async function migrate(): Promise<void> {
  const ownerUrl = addressOf('DATABASE_URL').href;
  const appPassword = passwordOf('DATABASE_APP_URL');
  const authPassword = passwordOf('DATABASE_AUTH_URL');
  const applied = await applyMigrations(ownerUrl);
  await ensureLogins(ownerUrl, { appPassword, authPassword });
  say(applied.length > 0 ? `Applied: ${applied.join(', ')}.` : 'The database is at this version already.');
}

function addressOf(name: string): URL {
  const text = process.env[name] ?? '';
  if (URL.canParse(text)) return new URL(text);
  throw new Error(`${name} must be a postgresql:// address. Set it, in .env or in the environment.`);
}

function passwordOf(name: string): string {
  const password = decodeURIComponent(addressOf(name).password);
  if (password) return password;
  throw new Error(`${name} has no password in it. Set one, in .env or in the environment.`);
}

function say(sentence: string): void {
  process.stdout.write(`${sentence}\n`);
}

migrate().catch((error: unknown) => {
  process.stderr.write(`${error instanceof Error ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
