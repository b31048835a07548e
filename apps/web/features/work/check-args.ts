import type { ActionKind, ArgsOf } from '@halfshaft/worklog';
import { later } from '@/lib/later';

/** Half of what a page weighs without them; what people type goes through forms that wait for them. */
export const ACTION_SHAPES = later(() => import('./action-shapes'));

export type CheckedArgs<K extends ActionKind> =
  | { ok: true; args: ArgsOf<K> }
  | { ok: false; sentence: string };

/**
 * Whether an action's arguments have the shape the server asks for, with their texts trimmed. Until the shapes have come
 * the arguments pass as they are: ids and taps are right by their types, and the server looks again.
 */
export function checkArgs<K extends ActionKind>(kind: K, args: ArgsOf<K>): CheckedArgs<K> {
  const shapes = ACTION_SHAPES.now();
  if (shapes === null) return { ok: true, args };
  const shape = shapes.actionArgs[kind].safeParse(args);
  if (shape.success) return { ok: true, args: shape.data as ArgsOf<K> };
  return { ok: false, sentence: shape.error.issues[0]?.message ?? 'Something is missing. Fill it in.' };
}
