import { randomUUID } from 'node:crypto';
import type { CarRow, StarterSet } from '@halfshaft/contract';
import { fullStarterCards, type JobCard, starterCards } from '@halfshaft/lifing';
import type { MemberTx, TeamTx } from '@halfshaft/store';
import { notAllowed, unknown } from '../../errors';
import { mayManage } from '../people/ability';
import { createCardRows, createCarRow, listCarRows, updateCarRow } from './data';

interface NewCar extends Omit<CarRow, 'carId'> {
  starterCards: StarterSet;
}

/** Helpers of one event see the cars that are entered in it. */
export function listCars(tx: MemberTx): Promise<CarRow[]> {
  return listCarRows(tx, tx.member.eventId);
}

export async function addCar(tx: MemberTx, car: NewCar, now: number) {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  return { carId: await createCar(tx, car, now) };
}

/** For callers that have proved the right already. Returns the id of the new car. */
export async function createCar(tx: TeamTx, car: NewCar, now: number): Promise<string> {
  const carId = randomUUID();
  await createCarRow(tx, carId, car, now);
  await createCardRows(tx, carId, firstCards(car), now);
  return carId;
}

function firstCards({ drive, surface, starterCards: set }: NewCar): JobCard[] {
  if (set === 'none') return [];
  return set === 'small' ? starterCards(drive, surface) : fullStarterCards(drive, surface);
}

export async function updateCar(tx: MemberTx, car: CarRow): Promise<void> {
  if (!mayManage(tx.member)) throw notAllowed('a manager');
  if (!(await updateCarRow(tx, car.carId, car))) throw unknown();
}
