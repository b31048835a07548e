import { ACTION_KINDS, ACTION_VERSION, type Action, type ActionKind, type PushedAction } from './model';
import type { Refusal } from './refusal';

export type Upgrade = { ok: true; action: Action } | { ok: false; refusal: Refusal };

/**
 * Brings an action of this version or the one before to this version's shape; anything else is a named refusal.
 * This is the one place that knows old shapes. It looks at version and kind only: that the arguments have the shape
 * of their version is checked by the caller, before or after.
 *
 * Version 0 is the pre-release shape: `raiseSnag` without `urgent`, which meant not urgent.
 *
 * @example
 * upgradeAction({ ...snagOfVersion0 }) // { ok: true, action: { …, version: 1, args: { …, urgent: false } } }
 */
export function upgradeAction(action: PushedAction): Upgrade {
  const { version, kind } = action;
  if (version > ACTION_VERSION) return { ok: false, refusal: { code: 'versionTooNew', version } };
  if (!isAcceptedVersion(version)) return { ok: false, refusal: { code: 'versionTooOld', version } };
  if (!isActionKind(kind)) return { ok: false, refusal: { code: 'unknownKind', kind } };
  const args = version < ACTION_VERSION ? upgradeArgs(kind, action.args) : action.args;
  // The kind is one of ours and the arguments are the caller's to check: see above.
  return { ok: true, action: { ...action, version: ACTION_VERSION, kind, args } as Action };
}

function upgradeArgs(kind: ActionKind, args: unknown): unknown {
  if (kind === 'raiseSnag' && typeof args === 'object') return { ...args, urgent: false };
  return args;
}

function isAcceptedVersion(version: number): boolean {
  return version === ACTION_VERSION || version === ACTION_VERSION - 1;
}

function isActionKind(kind: string): kind is ActionKind {
  return ACTION_KINDS.some((known) => known === kind);
}
