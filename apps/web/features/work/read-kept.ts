import type { WaitingAction } from './waiting-action';

/**
 * Whether something kept can be sent at all; what is not (a hand in the storage) must not hold up the others. Looked at
 * lightly, since ten thousand may be read at once: the server looks at each for itself, and answers what is wrong with it.
 */
export function isWaiting(stored: unknown): stored is WaitingAction {
  if (typeof stored !== 'object' || stored === null) return false;
  const { action, place, owner, ownerName } = stored as Partial<WaitingAction>;
  if (typeof action !== 'object' || action === null) return false;
  const texts = [place, owner, ownerName, action.actionId, action.deviceId, action.kind, action.by];
  const numbers = [action.deviceSeq, action.deviceTime, action.version];
  return texts.every((text) => typeof text === 'string') && numbers.every(Number.isSafeInteger);
}
