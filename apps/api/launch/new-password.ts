import { randomBytes } from 'node:crypto';
import { createAuth } from '../src/auth';
import { setNewPassword } from '../src/new-password';
import { StartProblem } from './problem';

/** 16 letters and digits, which nobody guesses and everybody can type. */
const RANDOM_BYTES = 12;

interface OpenDatabase {
  authUrl: string;
  secret: string;
  stop(): Promise<void>;
}

/**
 * `npm run new-password -- you@example.org`: gives an account a new random password, prints it, and signs the account out
 * everywhere. For whoever runs the server; with our own database, while the server is stopped.
 */
async function giveNewPassword(email: string | undefined): Promise<void> {
  if (!email) throw new StartProblem('Say whose: npm run new-password -- you@example.org');
  const database = await openDatabase();
  try {
    const { authUrl, secret } = database;
    const { auth, close } = createAuth({ authUrl, secret, publicUrl: 'http://localhost' });
    try {
      const password = randomBytes(RANDOM_BYTES).toString('base64url');
      if (!(await setNewPassword(auth, email, password)))
        throw new StartProblem(`No account with a password has the e-mail ${email}.`);
      process.stdout.write(`The new password of ${email}: ${password}\nIt is signed out on every device.\n`);
    } finally {
      await close();
    }
  } finally {
    await database.stop();
  }
}

/** The one that the environment names, as in a container, else that of `npm start`. */
async function openDatabase(): Promise<OpenDatabase> {
  const { DATABASE_AUTH_URL: authUrl, SIGN_IN_SECRET: secret } = process.env;
  if (authUrl && secret) return { authUrl, secret, stop: async () => {} };
  // The image of the server has no database of its own, and not what starts one.
  const [folder, { refuseSecondStart }, database] = await Promise.all([
    import('./home-folder'),
    import('./one-at-a-time'),
    import('./database'),
  ]);
  folder.openHomeFolder();
  refuseSecondStart();
  const secrets = folder.readSecrets();
  const { authUrl: ownAuthUrl, stop } = await database.openDatabase(secrets);
  return { authUrl: ownAuthUrl, secret: secrets.signInSecret, stop };
}

giveNewPassword(process.argv[2]).catch((error: unknown) => {
  const known = error instanceof StartProblem;
  process.stderr.write(`${known ? error.message : String(error)}\n`);
  process.exitCode = 1;
});
