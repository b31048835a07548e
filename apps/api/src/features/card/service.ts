import type { ImportTable, importTableOutput, saveCardInput } from '@halfshaft/contract';
import { completeCard, type JobCard, matchCards, readCardTable, type TableCard } from '@halfshaft/lifing';
import type { MemberTx } from '@halfshaft/store';
import type { z } from 'zod';
import { notAllowed, unknown } from '../../errors';
import { findCar } from '../car/data';
import { listCars } from '../car/service';
import { mayManage } from '../people/ability';
import {
  createCardRows,
  listCardRows,
  lockCardRow,
  lockCarRow,
  removeCardRow,
  updateCardRow,
  writeCardRows,
} from './data';

export async function listCards(tx: MemberTx, carId: string): Promise<JobCard[]> {
  const seen = await listCars(tx);
  if (!seen.some((car) => car.carId === carId)) throw unknown();
  return listCardRows(tx, carId);
}

export async function saveCard(tx: MemberTx, input: z.infer<typeof saveCardInput>, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  const { carId, cardId, card } = input;
  if (!(await findCar(tx, carId))) throw unknown();
  if (cardId) {
    const before = await lockCardRow(tx, { cardId, carId });
    if (!before) throw unknown();
    await updateCardRow(tx, { cardId, carId }, completeCard(card, before));
    return { cardId };
  }
  const [newId] = await createCardRows(tx, carId, [completeCard(card, null)], now);
  if (!newId) throw new Error('saveCard: no card was made');
  return { cardId: newId };
}

export async function removeCard(tx: MemberTx, cardId: string, now: number): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await removeCardRow(tx, cardId, now))) throw unknown();
}

/** All cards of the table or, when one cell is wrong, none. */
export async function importTable(
  tx: MemberTx,
  { carId, text, how }: ImportTable,
  now: number,
): Promise<z.infer<typeof importTableOutput>> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await lockCarRow(tx, carId))) throw unknown();
  const read = readCardTable(text);
  if (!read.ok) return read;
  if (how === 'replace') return replaceCards(tx, carId, read.cards, now);
  const cards = read.cards.map((card) => completeCard(card, null));
  await createCardRows(tx, carId, cards, now);
  return { ok: true, added: read.cards.length, kept: 0, removed: 0 };
}

async function replaceCards(tx: MemberTx, carId: string, table: TableCard[], now: number) {
  const { cards, removed } = matchCards(await listCardRows(tx, carId), table);
  await writeCardRows(tx, carId, cards, now);
  for (const card of removed) await removeCardRow(tx, card.id, now);
  const added = cards.filter(({ id }) => id === null).length;
  return { ok: true as const, added, kept: cards.length - added, removed: removed.length };
}
