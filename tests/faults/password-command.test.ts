import { execFile } from 'node:child_process';
import { resolve } from 'node:path';
import { promisify } from 'node:util';
import { expect, it } from 'vitest';
import { PASSWORD } from '../support/house';
import { keepHouse } from '../support/keep-house';
import { SECRET } from '../support/secret';

const house = keepHouse();
const ROOT = resolve(import.meta.dirname, '../..');

/** The command as whoever runs the server in containers gives it; what it wrote, and how it ended. */
async function giveNewPassword(...whose: string[]) {
  const command = ['--import', 'tsx', 'apps/api/launch/new-password.ts', ...whose];
  const env = { ...process.env, DATABASE_AUTH_URL: house.database.authUrl, SIGN_IN_SECRET: SECRET };
  return promisify(execFile)(process.execPath, command, { cwd: ROOT, env }).then(
    ({ stdout }) => ({ ok: true, said: stdout }),
    ({ stderr }: { stderr: string }) => ({ ok: false, said: stderr }),
  );
}

async function signIn(email: string, password: string) {
  const answer = await fetch(`${house.url}/auth/sign-in/email`, {
    method: 'POST',
    headers: { 'content-type': 'application/json', origin: house.url },
    body: JSON.stringify({ email, password }),
  });
  return answer.status;
}

async function isSignedIn(cookie: string) {
  const answer = await fetch(`${house.url}/auth/get-session`, { headers: { cookie } });
  return (await answer.json()) !== null;
}

it('lets a lone admin in again by whoever runs the server, and nobody else out', async () => {
  const [admin, other] = [await house.signUp('Lone'), await house.signUp('Other')];
  const { ok, said } = await giveNewPassword(admin.email.toUpperCase());
  expect(ok).toBe(true);
  const password = /: (\S+)\n/.exec(said)?.[1] ?? '';
  expect(password).toMatch(/^[\w-]{16}$/);
  expect(await signIn(admin.email, PASSWORD)).toBe(401);
  expect(await isSignedIn(admin.cookie)).toBe(false);
  expect(await signIn(admin.email, password)).toBe(200);
  expect(await isSignedIn(other.cookie)).toBe(true);
  expect(await signIn(other.email, PASSWORD)).toBe(200);
});

it('says in a sentence what it lacks', async () => {
  expect(await giveNewPassword()).toEqual({
    ok: false,
    said: 'Say whose: npm run new-password -- you@example.org\n',
  });
  expect(await giveNewPassword('nobody@example.org')).toEqual({
    ok: false,
    said: 'No account with a password has the e-mail nobody@example.org.\n',
  });
});
