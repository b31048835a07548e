import { joinIds } from './id-parts';
import type { TimeKey, TimeRef } from './state';

/**
 * The key of one control on one car's way in `WorkState.times`.
 *
 * @example
 * timeKeyOf({ entryId: 'e7', controlId: 'TC4A' }) // 'e7~TC4A'
 */
export function timeKeyOf(ref: TimeRef): TimeKey {
  return joinIds([ref.entryId, ref.controlId]);
}
