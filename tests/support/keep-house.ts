import { afterAll, beforeAll } from 'vitest';
import { type House, type HouseOptions, openHouse } from './house';

/** The house of one test file, opened before its tests and closed after them. What it has is there once tests run. */
export function keepHouse(options: HouseOptions = {}): House {
  const house = {} as House;
  beforeAll(async () => {
    Object.assign(house, await openHouse(options));
  });
  afterAll(() => house.close());
  return house;
}
