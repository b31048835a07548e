import type { Store } from '../client/store';
import { runFenced, type TransactionClient } from './run-fenced';

declare const userFence: unique symbol;

/** Proof of a signed-in account with no tenant chosen: sees its own memberships and what organisers published. */
export interface UserTx {
  readonly db: TransactionClient;
  readonly userId: string;
  readonly [userFence]: true;
}

/** One transaction for a signed-in account, outside every tenant's fence. */
export function asUser<T>(store: Store, userId: string, work: (tx: UserTx) => Promise<T>): Promise<T> {
  return runFenced(store, { user: userId }, (db) => work({ db, userId } as UserTx));
}
