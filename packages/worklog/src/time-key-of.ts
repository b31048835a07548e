import { joinIds } from './id-parts';
import type { TimeKey, TimeRef } from './state';

/**
 * The key of one control on one car's way in `WorkState.times`; a stage has one for its start and one for its finish.
 *
 * @example
 * timeKeyOf({ entryId: 'e7', controlId: 'TC4A' }) // 'e7~TC4A'
 * timeKeyOf({ entryId: 'e7', controlId: 'SS4', finish: true }) // 'e7~SS4~finish'
 */
export function timeKeyOf({ entryId, controlId, finish }: TimeRef): TimeKey {
  return joinIds(finish ? [entryId, controlId, 'finish'] : [entryId, controlId]);
}

/** The part of something that names where a time was written, and nothing more. */
export function timeRefOf({ entryId, controlId, finish }: TimeRef): TimeRef {
  return finish ? { entryId, controlId, finish } : { entryId, controlId };
}
