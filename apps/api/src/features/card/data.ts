import { randomUUID } from 'node:crypto';
import type { CardBody } from '@halfshaft/contract';
import { completeCard, type JobCard } from '@halfshaft/lifing';
import type { TeamTx } from '@halfshaft/store';
import { toDate } from '../../clock';

/** A card with nothing left unsaid. */
type KeptCard = Required<CardBody>;

/** New cards behind those the car has, in the order given. The ids they come with are replaced: ids are unique to a car. */
export async function createCardRows(
  tx: TeamTx,
  carId: string,
  cards: readonly KeptCard[],
  now: number,
): Promise<string[]> {
  const { teamId } = tx;
  const first = await tx.db.card.count({ where: { teamId, carId } });
  const rows = cards.map((card, index) => ({
    teamId,
    id: randomUUID(),
    carId,
    ordinal: first + index,
    body: { ...card, id: undefined },
    createdAt: toDate(now),
  }));
  await tx.db.card.createMany({ data: rows });
  return rows.map((row) => row.id);
}

/** The cards in use of one car, in their order. */
export async function listCardRows(tx: TeamTx, carId: string): Promise<JobCard[]> {
  const rows = await tx.db.card.findMany({
    where: { teamId: tx.teamId, carId, removedAt: null },
    orderBy: { ordinal: 'asc' },
  });
  return rows.map(toCard);
}

/** The card as it is now, held still until the transaction ends; null when the team has no such card in use on this car. */
export async function lockCardRow(
  tx: TeamTx,
  { cardId, carId }: { cardId: string; carId: string },
): Promise<JobCard | null> {
  const [row] = await tx.db.$queryRaw<{ id: string; body: unknown }[]>`
    SELECT id, body FROM card WHERE team_id = ${tx.teamId}::uuid AND id = ${cardId}::uuid
      AND car_id = ${carId}::uuid AND removed_at IS NULL FOR UPDATE`;
  return row ? toCard(row) : null;
}

/** Of a card that `lockCardRow` found. */
export async function updateCardRow(
  tx: TeamTx,
  where: { cardId: string; carId: string },
  card: KeptCard,
): Promise<void> {
  await tx.db.card.updateMany({
    where: { teamId: tx.teamId, id: where.cardId, carId: where.carId, removedAt: null },
    data: { body: { ...card } },
  });
}

/** Holds the car's cards still until the transaction ends, so that two tables never mix. False when there is no such car. */
export async function lockCarRow(tx: TeamTx, carId: string): Promise<boolean> {
  const rows = await tx.db.$queryRaw<{ id: string }[]>`
    SELECT id FROM car WHERE team_id = ${tx.teamId}::uuid AND id = ${carId}::uuid FOR UPDATE`;
  return rows.length > 0;
}

/** A car's cards in the order given: those with an id are changed, the others are new. */
export async function writeCardRows(
  tx: TeamTx,
  carId: string,
  cards: { id: string | null; card: KeptCard }[],
  now: number,
): Promise<void> {
  const { teamId } = tx;
  for (const [ordinal, { id, card }] of cards.entries()) {
    const body = { ...card, id: undefined };
    if (id === null) {
      const created = { teamId, id: randomUUID(), carId, ordinal, body, createdAt: toDate(now) };
      await tx.db.card.create({ data: created });
    } else await tx.db.card.updateMany({ where: { teamId, id, carId }, data: { ordinal, body } });
  }
}

/** The row stays: the log speaks of it. False when the team has no such card in use. */
export async function removeCardRow(tx: TeamTx, cardId: string, now: number): Promise<boolean> {
  const { count } = await tx.db.card.updateMany({
    where: { teamId: tx.teamId, id: cardId, removedAt: null },
    data: { removedAt: toDate(now) },
  });
  return count > 0;
}

export function toCard(row: { id: string; body: unknown }): JobCard {
  // Cards saved before triggers have no word of where they came from, nor those from before `fitsNewPart` of that.
  const stored = { starterId: null, ...(row.body as Omit<CardBody, 'starterId'>) };
  const card = { ...completeCard(stored, null), id: row.id };
  return { ...card, intervals: card.intervals.filter((limit) => !standsForNone(limit)) };
}

/** When every card had to have a limit, one that no car lives to see stood for none. */
function standsForNone({ counter, every }: CardBody['intervals'][number]): boolean {
  return counter === 'events' && every === 100;
}
