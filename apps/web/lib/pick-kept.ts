/**
 * What of a stored form may be put back: only fields the form still has, of the same type, since an older version of
 * the form may have stored something else. Null when nothing is left that differs from what the form shows already.
 */
export function pickKept<Values extends object>(
  stored: unknown,
  current: Values,
  leaveOut: readonly string[] = [],
): Partial<Values> | null {
  if (typeof stored !== 'object' || stored === null) return null;
  const shown = new Map<string, unknown>(Object.entries(current));
  const known = Object.entries(stored).filter(
    ([name, value]) => shown.has(name) && !leaveOut.includes(name) && isSameType(value, shown.get(name)),
  );
  const differs = known.some(([name, value]) => JSON.stringify(value) !== JSON.stringify(shown.get(name)));
  return differs ? (Object.fromEntries(known) as Partial<Values>) : null;
}

function isSameType(value: unknown, current: unknown): boolean {
  if (current === undefined || current === null) return true;
  return Array.isArray(current) ? Array.isArray(value) : typeof value === typeof current;
}
