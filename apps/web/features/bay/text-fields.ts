import type { DraftShape } from './use-draft';

/**
 * The shape of a draft that is nothing but texts, for forms on a first screen: they are there before zod is.
 *
 * @example
 * useDraft('time.e7.TC3', textFields('clock', 'held'), { clock: '', held: '' });
 */
export function textFields<Name extends string>(...names: Name[]): DraftShape<Record<Name, string>> {
  const isWhole = (stored: unknown): stored is Record<Name, string> =>
    typeof stored === 'object' &&
    stored !== null &&
    names.every((name) => typeof (stored as Record<string, unknown>)[name] === 'string');
  return {
    safeParse: (stored) => (isWhole(stored) ? { success: true, data: stored } : { success: false }),
  };
}
