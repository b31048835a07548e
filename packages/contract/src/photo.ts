import { z } from 'zod';
import { factId, teamId } from './ids';
import { wholeNumber } from './words';

/** Longest side of what a phone sends: enough to read a part number, and quick to send on a weak signal. */
export const PHOTO_SIDE_PIXELS = 1600;
/** What a phone shrinks a photo to. */
export const PHOTO_GOAL_BYTES = 400_000;
/** What the server takes; more than the goal, since a picture full of gravel shrinks badly. */
export const MOST_PHOTO_BYTES = 1_000_000;
/** What the server unpacks: a small file may hold a huge picture. */
export const MOST_PHOTO_PIXELS = 8_000_000;

/** What the log says of a photo's file. */
export const photoFile = {
  bytes: wholeNumber('The size of the photo', 1, MOST_PHOTO_BYTES),
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'That is not the check sum of a photo.'),
};

/** Which photo, in the address of its route. `small` for lists. */
export const photoQuery = z.object({
  team: teamId,
  photo: factId,
  size: z.enum(['small', 'full']).default('full'),
});
export type PhotoSize = z.infer<typeof photoQuery>['size'];

/** Where a photo is brought to (PUT) and fetched from (GET). */
export function photoAddress(team: string, photo: string, size: PhotoSize = 'full'): string {
  return `/photo?team=${team}&photo=${photo}&size=${size}`;
}
