/** Freezes a value all the way down; a Map's own setters are made to throw, since freezing leaves them working. */
export function deepFreeze<T>(value: T): T {
  if (typeof value !== 'object' || value === null || Object.isFrozen(value)) return value;
  if (value instanceof Map) {
    for (const member of value.values()) deepFreeze(member);
    const refuse = () => {
      throw new Error('deepFreeze: a frozen Map was changed.');
    };
    for (const name of ['set', 'delete', 'clear']) Object.defineProperty(value, name, { value: refuse });
  }
  for (const member of Object.values(value)) deepFreeze(member);
  return Object.freeze(value);
}
