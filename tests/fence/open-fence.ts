import pg from 'pg';
import { expect } from 'vitest';
import { type Caller, type House, openHouse } from '../support/house';
import { type Answer, ask } from './answer';
import { changedPlaces, forgetAllBut, readState } from './table-state';
import type { World } from './world';

/** A house together with its owner's login, which sees every tenant's rows. */
export interface Fence {
  house: House;
  owner: pg.Client;
  /** Asks, and fails the test when any row of any tenant changed. */
  askChangingNothing(caller: Caller, path: string, input: unknown): Promise<Answer>;
  /** Forgets what single tests founded. */
  keepOnly(worlds: World[]): Promise<void>;
  close(): Promise<void>;
}

/** Milliseconds: the house's clock stands still, so that two answers can be equal. */
export const NOW = 1_781_000_000_000;

export const UNKNOWN = {
  ok: false,
  code: 'NOT_FOUND',
  message: 'That does not exist, or it is not yours. Go back and choose again.',
};

export async function openFence(): Promise<Fence> {
  const house = await openHouse();
  house.clock.set(NOW);
  const owner = new pg.Client({ connectionString: house.database.ownerUrl });
  await owner.connect();
  return {
    house,
    owner,
    async askChangingNothing(caller, path, input) {
      const before = await readState(owner);
      const answer = await ask(caller, path, input);
      expect(changedPlaces(before, await readState(owner)), `${path} changed rows`).toEqual([]);
      return answer;
    },
    keepOnly: (worlds) =>
      forgetAllBut(
        owner,
        worlds.flatMap(({ teamId, organiser }) => [teamId, organiser.organiserId]),
      ),
    async close() {
      await owner.end();
      await house.close();
    },
  };
}

/** For values a fixture must have. */
export function present<T>(value: T | null | undefined): T {
  if (value === null || value === undefined) throw new Error('The fixture has nothing here.');
  return value;
}
