import { useQuery } from '@tanstack/react-query';
import { queryClient } from './api';
import { forgetAnswers } from './kept-answers';
import { wipePhoneDatabase } from './phone-database';

/** The signed-in account. A helper who came by a link has a name and no address. */
export interface Account {
  userId: string;
  name: string;
  email: string;
  isHelper: boolean;
}

export type SignInAnswer = { ok: true } | { ok: false; sentence: string };

const SESSION_KEY = ['session'];

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

export async function signOut(): Promise<void> {
  await post('sign-out', {});
  await forgetAnswers();
  await wipePhoneDatabase();
}

async function readSession(): Promise<Account | null> {
  const response = await fetch('/auth/get-session');
  if (!response.ok) throw new Error('The session could not be read.');
  const answer: unknown = await response.json();
  return toAccount(answer);
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
