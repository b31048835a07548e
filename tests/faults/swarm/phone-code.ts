import 'fake-indexeddb/auto';
import { IDBFactory } from 'fake-indexeddb';
import { vi } from 'vitest';

export type PhoneCode = Awaited<ReturnType<typeof loadPhoneCode>>;

/** The pages' own code as one phone loads it, on a database of its own. Like a phone it outlives the events it is used at. */
export async function loadPhoneCode() {
  vi.resetModules();
  const [work, box, shelf, lease, turn, client, database, args] = await Promise.all([
    import('../../../apps/web/features/work/work-store'),
    import('../../../apps/web/features/work/browser-box'),
    import('../../../apps/web/features/work/browser-shelf'),
    import('../../../apps/web/features/work/lease'),
    import('../../../apps/web/features/work/take-turn'),
    import('../../../apps/web/features/work/work-client'),
    import('../../../apps/web/lib/phone-database'),
    import('../../../apps/web/features/work/check-args'),
  ]);
  await args.ACTION_SHAPES.fetch();
  // Opened at once, while this phone's database is the one that the browser gives.
  globalThis.indexedDB = new IDBFactory();
  if (!(await database.openPhoneDatabase())) throw new Error('The phone has no database.');
  return { ...work, ...box, ...shelf, ...lease, ...turn, ...client, wipeCopies: database.wipeCopies };
}
