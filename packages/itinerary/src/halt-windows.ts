import type { ControlRole, Point } from './model';

/** A place where a car stands with its engine off, entered and left through controls. */
export type HaltKind = 'service' | 'remoteService' | 'regroup' | 'parcFerme';

const ENTERED_BY: Partial<Record<ControlRole, HaltKind>> = {
  serviceIn: 'service',
  remoteServiceIn: 'remoteService',
  regroupIn: 'regroup',
  parcFermeIn: 'parcFerme',
};

const LEFT_BY: Partial<Record<ControlRole, HaltKind>> = {
  serviceOut: 'service',
  remoteServiceOut: 'remoteService',
  regroupOut: 'regroup',
  parcFermeOut: 'parcFerme',
};

/**
 * Which halts the car is inside of after each point, index for index with `points`. A control that is two things at
 * once ("regroup out / service in") is left first and entered second, whatever the order its roles are written in.
 *
 * @example
 * haltsAfterEachPoint([{ kind: 'control', roles: ['regroupOut', 'serviceIn'], … }]) // [Set { 'service' }]
 */
export function haltsAfterEachPoint(
  points: readonly { kind: Point['kind']; roles?: readonly ControlRole[] }[],
): ReadonlySet<HaltKind>[] {
  const inside = new Set<HaltKind>();
  return points.map((point) => {
    const roles = point.roles ?? [];
    for (const role of roles) {
      const left = LEFT_BY[role];
      if (left) inside.delete(left);
    }
    for (const role of roles) {
      const entered = ENTERED_BY[role];
      if (entered) inside.add(entered);
    }
    return new Set(inside);
  });
}
