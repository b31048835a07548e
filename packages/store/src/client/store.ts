import { PrismaPg } from '@prisma/adapter-pg';
import { PrismaClient } from './generated/client';

/** Where the database is and how many connections this process may hold. */
export interface StoreSettings {
  /** Address for the app's login, which owns nothing; may lead through a pooler in transaction mode. */
  pooledUrl: string;
  poolSize: number;
}

/**
 * An open database. It offers nothing by itself: the only ways in are the functions of `fence`, each of which is one
 * transaction inside a tenant's fence.
 */
export interface Store {
  readonly poolSize: number;
  close(): Promise<void>;
}

const clients = new WeakMap<Store, PrismaClient>();

export function openStore(settings: StoreSettings): Store {
  const adapter = new PrismaPg({ connectionString: settings.pooledUrl, max: settings.poolSize });
  const client = new PrismaClient({ adapter });
  const store: Store = { poolSize: settings.poolSize, close: () => client.$disconnect() };
  clients.set(store, client);
  return store;
}

/** For `fence` alone: the bare client never leaves this package. */
export function clientOf(store: Store): PrismaClient {
  const client = clients.get(store);
  if (!client) throw new Error('clientOf: this store was not made by openStore');
  return client;
}
