import type { saveCardInput } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import type { MemberTx } from '@halfshaft/store';
import type { z } from 'zod';
import { notAllowed, unknown } from '../../errors';
import { findCar } from '../car/data';
import { listCars } from '../car/service';
import { mayManage } from '../people/ability';
import { createCardRows, listCardRows, removeCardRow, updateCardRow } from './data';

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
    if (!(await updateCardRow(tx, { cardId, carId }, card))) throw unknown();
    return { cardId };
  }
  const [newId] = await createCardRows(tx, carId, [card], now);
  if (!newId) throw new Error('saveCard: no card was made');
  return { cardId: newId };
}

export async function removeCard(tx: MemberTx, cardId: string, now: number): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await removeCardRow(tx, cardId, now))) throw unknown();
}
