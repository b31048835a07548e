// Numbers and addresses that pages need before any schema: a file with schemas in it brings all of zod along.

/**
 * Raise it whenever `EventReplica`, or anything in it, gains or changes a field: a phone keeps replicas from before, and
 * drops those of another version instead of drawing what it cannot read.
 */
export const REPLICA_VERSION = 4;

/** What one request may carry; a phone with more to send sends again. */
export const MOST_ACTIONS = 100;

/** Longest side of what a phone sends: enough to read a part number, and quick to send on a weak signal. */
export const PHOTO_SIDE_PIXELS = 1600;
/** What a phone shrinks a photo to. */
export const PHOTO_GOAL_BYTES = 400_000;
/** What the server takes; more than the goal, since a picture full of gravel shrinks badly. */
export const MOST_PHOTO_BYTES = 1_000_000;
/** What the server unpacks: a small file may hold a huge picture. */
export const MOST_PHOTO_PIXELS = 8_000_000;

/** `small` for lists. */
export const PHOTO_SIZES = ['small', 'full'] as const;
export type PhotoSize = (typeof PHOTO_SIZES)[number];

/** Where a photo is brought to (PUT) and fetched from (GET). */
export function photoAddress(team: string, photo: string, size: PhotoSize = 'full'): string {
  return `/photo?team=${team}&photo=${photo}&size=${size}`;
}
