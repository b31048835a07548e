import { openPhoneDatabase } from '@/lib/phone-database';

export type DraftFile = Uint8Array<ArrayBuffer>;

/** Pictures of what is still being written down. They live as long as its words do: until it is done, or signing out. */
export async function readDraftPhotos(key: string): Promise<DraftFile[]> {
  const database = await openPhoneDatabase();
  return (await database?.get('draftPhotos', key)) ?? [];
}

/** None: the draft is forgotten. Rejects where the phone has no room. */
export async function keepDraftPhotos(key: string, files: readonly DraftFile[]): Promise<void> {
  const database = await openPhoneDatabase();
  if (files.length > 0) await database?.put('draftPhotos', [...files], key);
  else await database?.delete('draftPhotos', key);
}

/** The next person may hold the same phone. */
export async function forgetDraftPhotos(): Promise<void> {
  await (await openPhoneDatabase())?.clear('draftPhotos');
}
