import { factId, teamId } from './ids';
import { MOST_PHOTO_BYTES, PHOTO_SIZES } from './plain';
import { wholeNumber } from './words';
import * as z from './zod';

/** What the log says of a photo's file. */
export const photoFile = {
  bytes: wholeNumber('The size of the photo', 1, MOST_PHOTO_BYTES),
  sha256: z.string().regex(/^[0-9a-f]{64}$/, 'That is not the check sum of a photo.'),
};

/** Which photo, in the address of its route. `small` for lists. */
export const photoQuery = z.object({
  team: teamId,
  photo: factId,
  size: z.enum(PHOTO_SIZES).default('full'),
});
