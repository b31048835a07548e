import { MOST_PHOTO_BYTES, PHOTO_GOAL_BYTES, PHOTO_SIDE_PIXELS } from '@halfshaft/contract';
import { fitInside } from './fit-inside';

/** Tried in turn until the file is small enough; the last one is a picture one can still read. */
const ATTEMPTS = [
  { quality: 0.82, side: PHOTO_SIDE_PIXELS },
  { quality: 0.65, side: PHOTO_SIDE_PIXELS },
  { quality: 0.6, side: PHOTO_SIDE_PIXELS * 0.75 },
  { quality: 0.5, side: PHOTO_SIDE_PIXELS * 0.5 },
];

export type Shrunk = { ok: true; file: Uint8Array<ArrayBuffer> } | { ok: false; sentence: string };

const UNREADABLE =
  'This phone cannot read that picture. Take it with the camera, or choose one that is JPEG, PNG or WebP.';

/**
 * A picture as it is sent: upright, small, drawn anew, so that where it was taken and on what phone stays on the phone. A
 * JPEG, since every browser can write it.
 */
export async function shrinkPhoto(picked: Blob): Promise<Shrunk> {
  try {
    const picture = await createImageBitmap(picked, { imageOrientation: 'from-image' });
    let drawn = await draw(picture, ATTEMPTS[0]);
    for (const attempt of ATTEMPTS.slice(1)) {
      if (drawn.size <= PHOTO_GOAL_BYTES) break;
      drawn = await draw(picture, attempt);
    }
    picture.close();
    if (drawn.size > MOST_PHOTO_BYTES) return { ok: false, sentence: UNREADABLE };
    return { ok: true, file: new Uint8Array(await drawn.arrayBuffer()) };
  } catch {
    return { ok: false, sentence: UNREADABLE };
  }
}

async function draw(
  picture: ImageBitmap,
  { quality, side } = { quality: 0.8, side: PHOTO_SIDE_PIXELS },
): Promise<Blob> {
  const canvas = document.createElement('canvas');
  Object.assign(canvas, fitInside(picture, side));
  canvas.getContext('2d', { alpha: false })?.drawImage(picture, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob(
      (blob) => (blob ? resolve(blob) : reject(new Error('The picture could not be drawn.'))),
      'image/jpeg',
      quality,
    );
  });
}
