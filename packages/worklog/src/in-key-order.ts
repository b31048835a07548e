/** The same value with its keys in order, so that its JSON is equal exactly when the content is. */
export function inKeyOrder(value: unknown): unknown {
  if (Array.isArray(value)) return value.map(inKeyOrder);
  if (typeof value !== 'object' || value === null) return value;
  const pairs = Object.entries(value).sort(([one], [other]) => (one < other ? -1 : 1));
  return Object.fromEntries(pairs.map(([key, member]) => [key, inKeyOrder(member)]));
}
