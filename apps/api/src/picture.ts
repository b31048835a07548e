import { MOST_PHOTO_PIXELS, PHOTO_SIDE_PIXELS } from '@halfshaft/contract';
import sharp from 'sharp';
import type { Redrawn } from './features/photo/service';

const SMALL_SIDE_PIXELS = 320;
const QUALITY = 80;
const READABLE = ['VipsForeignLoadJpegBuffer', 'VipsForeignLoadPngBuffer', 'VipsForeignLoadWebpBuffer'];

// Whatever a file claims to be, only these three readers ever see it.
sharp.block({ operation: ['VipsForeignLoad'] });
sharp.unblock({ operation: READABLE });
sharp.cache(false);

/**
 * Draws a picture anew, upright and in two sizes. What else a file carries (where it was taken, other data behind the
 * picture) does not come along. The pixels are counted before any of them is unpacked.
 */
export async function redrawPicture(file: Uint8Array): Promise<Redrawn> {
  try {
    const { width, height } = await sharp(file, { limitInputPixels: false }).metadata();
    if (width * height > MOST_PHOTO_PIXELS) return { ok: false, why: 'tooManyPixels' };
    const full = await shrink(file, PHOTO_SIDE_PIXELS);
    return { ok: true, full, small: await shrink(full, SMALL_SIDE_PIXELS) };
  } catch {
    return { ok: false, why: 'noPicture' };
  }
}

async function shrink(file: Uint8Array, side: number): Promise<Uint8Array<ArrayBuffer>> {
  const drawn = await sharp(file, { limitInputPixels: MOST_PHOTO_PIXELS, failOn: 'error' })
    .autoOrient()
    .resize({ width: side, height: side, fit: 'inside', withoutEnlargement: true })
    .flatten({ background: 'white' })
    .jpeg({ quality: QUALITY })
    .toBuffer();
  return new Uint8Array(drawn);
}
