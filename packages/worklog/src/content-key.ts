import { inKeyOrder } from './in-key-order';
import type { PushedAction } from './model';
import { upgradeAction } from './upgrade-action';

/**
 * An action as text that is equal exactly when the content is: JSON with its keys in order. A server keeps it beside
 * the action id, to tell a repeat (same id, same content) from a mistake (same id, other content). An action of the
 * version before has the key of its upgrade, since an app may be updated while actions wait to be sent.
 *
 * @example
 * contentKey(action) === contentKey(structuredClone(action)) // true
 */
export function contentKey(action: PushedAction): string {
  const upgrade = upgradeAction(action);
  return textInKeyOrder(upgrade.ok ? upgrade.action : action);
}

/**
 * True when both actions say the same, whatever the order of their keys.
 *
 * @example
 * sameContent(action, { ...action, by: 'kai' }) // false
 */
export function sameContent(one: PushedAction, other: PushedAction): boolean {
  return contentKey(one) === contentKey(other);
}

/**
 * A value as JSON with its keys in order: equal exactly when the values are.
 *
 * @example
 * textInKeyOrder({ b: 1, a: 2 }) // '{"a":2,"b":1}'
 */
export function textInKeyOrder(value: unknown): string {
  return JSON.stringify(inKeyOrder(value));
}
