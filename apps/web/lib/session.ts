import { useQuery } from '@tanstack/react-query';
import { queryClient } from './api';
import { forgetAnswers } from './kept-answers';
import { wipeCopies } from './phone-database';
import { tellSessionChanged } from './session-change';
import { readStored, removeStored, writeStored } from './storage';

/** The signed-in account. A helper who came by a link has a name and no address. */
export interface Account {
  userId: string;
  name: string;
  email: string;
  isHelper: boolean;
}

export type SignInAnswer = { ok: true } | { ok: false; sentence: string };

const SESSION_KEY = ['session'];
/** Whose copies this device holds. */
const LAST_USER = 'session.user';

/** `data` is null when nobody is signed in, undefined while it is being asked. */
export function useSession() {
  return useQuery({ queryKey: SESSION_KEY, queryFn: readSession, staleTime: 60_000 });
}

export function signIn(email: string, password: string): Promise<SignInAnswer> {
  return post('sign-in/email', { email, password });
}

export function signUp(name: string, email: string, password: string): Promise<SignInAnswer> {
  return post('sign-up/email', { name, email, password });
}

/** A session for a helper: a name only, given when joining. */
export function startHelperSession(): Promise<SignInAnswer> {
  return post('sign-in/anonymous', {});
}

/** Sets a new password by a link from the team, which ends every session of the account. Signs nobody in. */
export function setPassword(token: string, newPassword: string): Promise<SignInAnswer> {
  return post('reset-password', { token, newPassword });
}

/** Signs out and forgets all copies here. Without a connection nothing happens: the session would go on unseen. */
export async function signOut(): Promise<SignInAnswer> {
  const answer = await post('sign-out', {});
  if (!answer.ok && answer.sentence === NOT_REACHED) return answer;
  queryClient.clear();
  await forgetAnswers();
  await wipeCopies();
  removeStored(LAST_USER);
  tellSessionChanged();
  return { ok: true };
}

async function readSession(): Promise<Account | null> {
  const response = await fetch('/auth/get-session');
  if (!response.ok) throw new Error('The session could not be read.');
  const answer: unknown = await response.json();
  const account = toAccount(answer);
  if (account) await noteUser(account.userId);
  return account;
}

/** Copies made for someone else would show their name on what this person does. */
async function noteUser(userId: string): Promise<void> {
  const before = readStored(LAST_USER);
  if (before === userId) return;
  writeStored(LAST_USER, userId);
  if (before === null) return;
  queryClient.removeQueries({ predicate: ({ queryKey }) => queryKey[0] !== SESSION_KEY[0] });
  await forgetAnswers();
  await wipeCopies();
  tellSessionChanged();
}

function toAccount(answer: unknown): Account | null {
  if (typeof answer !== 'object' || answer === null || !('user' in answer)) return null;
  const user = answer.user as { id: string; name: string; email: string; isAnonymous?: boolean | null };
  return { userId: user.id, name: user.name, email: user.email, isHelper: user.isAnonymous === true };
}

const SENTENCES: Record<string, string> = {
  INVALID_EMAIL_OR_PASSWORD: 'E-mail and password do not match. Check both and try again.',
  USER_ALREADY_EXISTS: 'There is an account with this e-mail already. Sign in instead.',
  USER_ALREADY_EXISTS_USE_ANOTHER_EMAIL: 'There is an account with this e-mail already. Sign in instead.',
  PASSWORD_TOO_SHORT: 'The password is too short. Use at least 10 characters.',
  PASSWORD_TOO_LONG: 'The password is too long. Use at most 200 characters.',
  INVALID_TOKEN: 'This link was used already, or it has run out. Ask an admin of your team for a new one.',
  PASSWORD_LINK_VOID: 'This link counts no more. Ask an admin of your team, or whoever runs this server.',
  INVALID_EMAIL: 'That is not a complete e-mail address. Check it.',
};
const TOO_OFTEN = 'Too many tries from here. Wait a minute, then try again.';
const NOT_REACHED = 'The server cannot be reached. Try again when you have a connection.';

async function post(path: string, body: object): Promise<SignInAnswer> {
  try {
    const response = await fetch(`/auth/${path}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify(body),
    });
    if (response.ok) {
      await queryClient.invalidateQueries({ queryKey: SESSION_KEY });
      return { ok: true };
    }
    const answer: unknown = await response.json().catch(() => null);
    return { ok: false, sentence: sentenceFor(response.status, answer) };
  } catch {
    return { ok: false, sentence: NOT_REACHED };
  }
}

function sentenceFor(status: number, answer: unknown): string {
  if (status === 429) return TOO_OFTEN;
  const code = typeof answer === 'object' && answer !== null && 'code' in answer ? String(answer.code) : '';
  return SENTENCES[code] ?? 'That did not work. Check what you typed and try again.';
}
