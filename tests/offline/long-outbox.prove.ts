import { expect, it } from 'vitest';
import { keepHouse } from '../support/keep-house';
import { PAGES } from '../support/screens';
import { countKept, snagWords } from './phone';
import { expectInOrder, sendLongOutbox } from './send-long-outbox';

const MANY = 10_000;

const house = keepHouse({ pages: PAGES });

it(`sends all of ${MANY} waiting entries, each once and in order, and keeps none`, async () => {
  const { page, log } = await sendLongOutbox(house, { waiting: MANY, answered: MANY + 1 });
  expect(log).toHaveLength(MANY + 1);
  expect(new Set(log.map(({ actionId }) => actionId)).size).toBe(MANY + 1);
  expectInOrder(log);
  expect(snagWords(log)).toHaveLength(1);
  await page.getByText('kept on this phone').waitFor({ state: 'detached' });
  expect(await countKept(page)).toBe(0);
});
