import { createHash } from 'node:crypto';
import { MOST_PHOTO_PIXELS, type PhotoSize } from '@halfshaft/contract';
import type { MemberTx, Store } from '@halfshaft/store';
import { AppError, unknown } from '../../errors';
import { maySeeEvent } from '../people/ability';
import {
  findKnownPhoto,
  insertPicture,
  inTeam,
  type KnownPhoto,
  lockStoredBytes,
  type PictureRow,
  readPicture,
} from './data';

export interface PhotoClaim {
  teamId: string;
  userId: string;
  photoId: string;
}

/** How much pictures may take up, as they are stored. */
export interface PhotoLimits {
  eventBytes: number;
  teamBytes: number;
}

/** What became of a file that should be a picture: drawn anew, in two sizes, or why not. */
export type Redrawn =
  | ({ ok: true } & Pick<PictureRow, 'full' | 'small'>)
  | { ok: false; why: 'noPicture' | 'tooManyPixels' };

export interface PhotoTools {
  redraw(file: Uint8Array): Promise<Redrawn>;
  limits: PhotoLimits;
  now(): number;
}

const OTHER_FILE =
  'This is not the picture that the log speaks of, so it was not taken. Take the photo again.';
const NO_PICTURE =
  'This picture is damaged or of a kind that is not taken. Take the photo again, as JPEG, PNG or WebP.';
const TOO_MANY_PIXELS = `This picture has more than ${MOST_PHOTO_PIXELS / 1_000_000} million pixels, so it was not taken. Take the photo again with this page, which makes it smaller.`;

/**
 * Takes the picture of a photo that the log already speaks of. Brought again, it is already there, which is as good. The
 * drawing happens between two transactions, since it takes its time.
 *
 * @throws AppError with a sentence for its author when it is not taken
 */
export async function takePicture(store: Store, claim: PhotoClaim, file: Uint8Array, tools: PhotoTools) {
  const known = await inTeam(store, claim, (tx) => findWanted(tx, claim.photoId));
  if (known.isStored) return;
  if (!isFileOf(known, file)) throw new AppError('badInput', OTHER_FILE);
  const drawn = await tools.redraw(file);
  if (!drawn.ok) {
    const tooMany = drawn.why === 'tooManyPixels';
    throw new AppError(tooMany ? 'tooMuch' : 'badInput', tooMany ? TOO_MANY_PIXELS : NO_PICTURE);
  }
  const { full, small } = drawn;
  const { photoId } = claim;
  const row = { photoId, eventId: known.eventId, full, small, bytes: full.length + small.length };
  await inTeam(store, claim, (tx) => keepWithinLimits(tx, row, tools));
}

async function findWanted(tx: MemberTx, photoId: string): Promise<KnownPhoto> {
  const known = await findKnownPhoto(tx, photoId);
  if (known && !known.withdrawn && maySeeEvent(tx.member, known.eventId)) return known;
  throw unknown();
}

/** The file that the log speaks of, or the same picture as another server had drawn it. */
function isFileOf({ bytes, sha256, carried }: KnownPhoto, file: Uint8Array): boolean {
  const sum = createHash('sha256').update(file).digest('hex');
  return (file.length === bytes && sum === sha256) || carried.includes(sum);
}

async function keepWithinLimits(tx: MemberTx, row: PictureRow, { limits, now }: PhotoTools): Promise<void> {
  const stored = await lockStoredBytes(tx, row.eventId);
  // Once more behind the lock: the same picture may have come twice at once.
  if ((await findWanted(tx, row.photoId)).isStored) return;
  if (stored.ofEvent + row.bytes > limits.eventBytes) throw full('this event', limits.eventBytes);
  if (stored.ofTeam + row.bytes > limits.teamBytes) throw full('your team', limits.teamBytes);
  await insertPicture(tx, row, now());
}

function full(what: string, limit: number): AppError {
  const megabytes = Math.floor(limit / 1_000_000);
  const sentence = `There is no room for this photo: those of ${what} take up all ${megabytes} MB. It stays on this phone; ask whoever runs the server for more room, then send it again.`;
  return new AppError('tooMuch', sentence);
}

/** The picture for a member of the team who may see its event. */
export async function showPicture(tx: MemberTx, photoId: string, size: PhotoSize): Promise<Uint8Array> {
  const { isStored } = await findWanted(tx, photoId);
  const picture = isStored ? await readPicture(tx, photoId, size) : null;
  if (!picture) throw unknown();
  return picture;
}
