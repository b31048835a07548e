import { rolesOf } from '../control-roles';
import type { ControlRole } from '../model';

/**
 * The roles of two halts that share one direction ("Regroup & Technical zone in"); null where the text is clear without,
 * or stays unclear. A stroke shares nothing: "Regroup / Service in" may be left and entered.
 *
 * @example
 * rolesWithSharedDirection('Regroup & Technical zone in') // ['regroupIn', 'technicalIn']
 */
export function rolesWithSharedDirection(name: string): ControlRole[] | null {
  if (!rolesOf(name).unclear) return null;
  const direction = /\b(in|out|entry|exit)\b/i.exec(name)?.[1];
  if (direction === undefined) return null;
  const { roles, unclear } = rolesOf(
    name.replace(/ ?(?:&|\+|\band\b|\bund\b|\bet\b) ?/gi, ` ${direction} / `),
  );
  return unclear || roles.length === 0 ? null : roles;
}
