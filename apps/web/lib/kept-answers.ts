import { REPLICA_VERSION } from '@halfshaft/contract';
import type {
  PersistedClient,
  Persister,
  PersistQueryClientOptions,
} from '@tanstack/react-query-persist-client';
import { KEEP_MILLIS } from './api';
import { openPhoneDatabase } from './phone-database';

const KEY = 'last';

/** Keeps the last answers on the device: who is signed in, the teams, their events and cars. */
const persister: Persister = {
  async persistClient(answers: PersistedClient) {
    await (await openPhoneDatabase())?.put('answers', answers, KEY);
  },
  async restoreClient() {
    const answers = await (await openPhoneDatabase())?.get('answers', KEY);
    return answers as PersistedClient | undefined;
  },
  async removeClient() {
    await (await openPhoneDatabase())?.delete('answers', KEY);
  },
};

/** An answer in another shape than this app reads would break a screen, so the version of the shapes stands on it. */
export const keptAnswers: Omit<PersistQueryClientOptions, 'queryClient'> = {
  persister,
  maxAge: KEEP_MILLIS,
  buster: String(REPLICA_VERSION),
};

/** Forgets all answers on the device. */
export async function forgetAnswers(): Promise<void> {
  await persister.removeClient();
}
