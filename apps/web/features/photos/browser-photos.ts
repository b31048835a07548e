import { openPhoneDatabase, type PhoneDatabase } from '@/lib/phone-database';
import { askToPersist } from '@/lib/storage-room';
import { tabChannel } from '@/lib/tab-channel';
import type { KeptPhoto, PhotoBox } from './kept-photo';

/** As for entries: written to the disk before the promise resolves. */
const DURABLE = { durability: 'strict' } as const;

/** The pictures in the browser's own database, beside the entries that wait. */
export function browserPhotos(): PhotoBox {
  const channel = tabChannel<'changed'>('photos');
  const here = new Set<() => void>();
  const change = async (make: (database: PhoneDatabase) => Promise<unknown>) => {
    const database = await openPhoneDatabase();
    if (!database) throw new Error('The browser keeps no database.');
    await make(database);
    channel.tell('changed');
    for (const listener of here) listener();
  };
  return {
    async read(place) {
      const database = await openPhoneDatabase();
      const kept = await database?.getAllFromIndex('photos', 'byWhose', allOf(place));
      return (kept ?? []) as KeptPhoto[];
    },
    async listOwners() {
      const database = await openPhoneDatabase();
      const owners: { place: string; ownerName: string }[] = [];
      const index = database?.transaction('photos').store.index('byWhose');
      for (let found = await index?.openKeyCursor(); found; found = await found.continue()) {
        const [place, ownerName] = found.key;
        owners.push({ place, ownerName });
      }
      return owners;
    },
    async keep(photo) {
      await change(async (database) => {
        const write = database.transaction('photos', 'readwrite', DURABLE);
        await Promise.all([write.store.put(photo, photo.photoId), write.done]);
      });
      askToPersist();
    },
    drop: ({ photoId }) => change((database) => database.delete('photos', photoId)),
    clear: () => change((database) => database.clear('photos')),
    hear(listener) {
      here.add(listener);
      const forget = channel.hear(listener);
      return () => {
        here.delete(listener);
        forget();
      };
    },
  };
}

function allOf(place: string): IDBKeyRange {
  return IDBKeyRange.bound([place], [place, []]);
}
