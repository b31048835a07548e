import type { CarRow } from '@halfshaft/contract';
import type { TeamTx } from '@halfshaft/store';
import { toDate } from '../../clock';

export { createCardRows } from '../card/data';

type CarFields = Omit<CarRow, 'carId'>;

/** `atEvent`: only the cars entered in that event; null for all. */
export async function listCarRows(tx: TeamTx, atEvent: string | null): Promise<CarRow[]> {
  const entered = atEvent === null ? {} : { entries: { some: { eventId: atEvent } } };
  const where = { teamId: tx.teamId, ...entered };
  const rows = await tx.db.car.findMany({ where, orderBy: { createdAt: 'asc' } });
  return rows.map(toCar);
}

export async function findCar(tx: TeamTx, carId: string): Promise<CarRow | null> {
  const row = await tx.db.car.findUnique({ where: { teamId_id: { teamId: tx.teamId, id: carId } } });
  return row && toCar(row);
}

export async function createCarRow(tx: TeamTx, carId: string, car: CarFields, now: number): Promise<void> {
  const { name, drive, surface } = car;
  await tx.db.car.create({
    data: { teamId: tx.teamId, id: carId, name, drive, surface, createdAt: toDate(now) },
  });
}

/** False when the team has no such car. */
export async function updateCarRow(tx: TeamTx, carId: string, car: CarFields): Promise<boolean> {
  const { name, drive, surface } = car;
  const { count } = await tx.db.car.updateMany({
    where: { teamId: tx.teamId, id: carId },
    data: { name, drive, surface },
  });
  return count > 0;
}

export function toCar(row: { id: string; name: string; drive: string; surface: string }): CarRow {
  return {
    carId: row.id,
    name: row.name,
    drive: row.drive as CarRow['drive'],
    surface: row.surface as CarRow['surface'],
  };
}
