import type { PhotoSize } from '@halfshaft/contract';
import type { TeamTx } from '@halfshaft/store';
import { toDate } from '../../clock';

// A revoked member may still bring the picture of a photo that the log took.
export { inTeam } from '../work/data';

/** What the log says of a photo, and whether its picture is here. */
export interface KnownPhoto {
  eventId: string;
  bytes: number;
  sha256: string;
  /** Check sums of the picture as other servers had drawn it, of files that were brought in. */
  carried: string[];
  withdrawn: boolean;
  isStored: boolean;
}

export async function findKnownPhoto({ db, teamId }: TeamTx, photoId: string): Promise<KnownPhoto | null> {
  const [row] = await db.$queryRaw<KnownPhoto[]>`
    SELECT event_id AS "eventId", (body->'fact'->>'bytes')::int AS bytes, body->'fact'->>'sha256' AS sha256,
      (body->>'withdrawn')::boolean AS withdrawn,
      ARRAY(SELECT pictures->>${photoId} FROM bring_in WHERE team_id = ${teamId}::uuid
        AND event_id = car_fact.event_id AND pictures->>${photoId} IS NOT NULL) AS carried,
      EXISTS (SELECT FROM photo WHERE team_id = ${teamId}::uuid AND id = ${photoId}::uuid) AS "isStored"
    FROM car_fact WHERE team_id = ${teamId}::uuid AND id = ${photoId}::uuid AND body->'fact'->>'kind' = 'photo'`;
  return row ?? null;
}

/**
 * How many bytes are stored, once pictures of photos that were taken back are gone. Nobody else of the team stores any
 * until this transaction ends, so that the sums hold.
 */
export async function lockStoredBytes(
  { db, teamId }: TeamTx,
  eventId: string,
): Promise<{ ofEvent: number; ofTeam: number }> {
  await db.$queryRaw`SELECT 1 FROM pg_advisory_xact_lock(hashtextextended('photo ' || ${teamId}, 0))`;
  await db.$executeRaw`
    DELETE FROM photo USING car_fact AS said WHERE photo.team_id = ${teamId}::uuid
      AND said.team_id = photo.team_id AND said.id = photo.id AND (said.body->>'withdrawn')::boolean`;
  const ofTeam = await db.photo.aggregate({ where: { teamId }, _sum: { bytes: true } });
  const ofEvent = await db.photo.aggregate({ where: { teamId, eventId }, _sum: { bytes: true } });
  return { ofEvent: ofEvent._sum.bytes ?? 0, ofTeam: ofTeam._sum.bytes ?? 0 };
}

export interface PictureRow {
  photoId: string;
  eventId: string;
  full: Uint8Array<ArrayBuffer>;
  small: Uint8Array<ArrayBuffer>;
  bytes: number;
}

export async function insertPicture({ db, teamId }: TeamTx, row: PictureRow, now: number): Promise<void> {
  const { photoId: id, eventId, bytes, full: image, small } = row;
  await db.photo.create({ data: { teamId, id, eventId, bytes, image, small, storedAt: toDate(now) } });
}

export async function readPicture(
  { db, teamId }: TeamTx,
  photoId: string,
  size: PhotoSize,
): Promise<Uint8Array | null> {
  const where = { teamId_id: { teamId, id: photoId } };
  if (size === 'small') return (await db.photo.findUnique({ where, select: { small: true } }))?.small ?? null;
  return (await db.photo.findUnique({ where, select: { image: true } }))?.image ?? null;
}
