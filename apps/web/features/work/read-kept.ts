import { pushedAction } from '@halfshaft/contract';
import type { WaitingAction } from './waiting-action';

/** What is not an action (a hand in the storage) could not be sent either: it must not hold up the others. */
export function isWaiting(stored: unknown): stored is WaitingAction {
  if (typeof stored !== 'object' || stored === null) return false;
  const { action, place, owner } = stored as Partial<WaitingAction>;
  return typeof place === 'string' && typeof owner === 'string' && pushedAction.safeParse(action).success;
}
