/** The part of a zod schema this walk looks at; zod's own types hide it. */
interface SchemaDef {
  type: string;
  format?: string;
  shape?: Record<string, unknown>;
  element?: unknown;
  innerType?: unknown;
  options?: unknown[];
  valueType?: unknown;
}

/**
 * Where a schema asks for an id, such as `actions.0.by`: found in the schema and not written down by hand, so that a
 * new id field cannot be forgotten.
 */
export function idPathsOf(schema: unknown, path: string[] = []): string[] {
  const { def } = schema as { def?: SchemaDef };
  if (!def) throw new Error(`No schema stands at ${path.join('.') || 'the top'}.`);
  if (def.type === 'string') return def.format === 'uuid' ? [path.join('.')] : [];
  const inside = [
    ...Object.entries(def.shape ?? {}).map(([key, each]) => idPathsOf(each, [...path, key])),
    ...(def.element ? [idPathsOf(def.element, [...path, '0'])] : []),
    ...(def.innerType ? [idPathsOf(def.innerType, path)] : []),
    ...(def.options ?? []).map((each) => idPathsOf(each, path)),
    ...(def.valueType ? [idPathsOf(def.valueType, [...path, '*'])] : []),
  ];
  return [...new Set(inside.flat())];
}

/** A copy of the input with another value at `path`. Throws when nothing stands there. */
export function replaceAt<T>(input: T, path: string, value: unknown): T {
  const copy = structuredClone(input);
  const keys = path.split('.');
  const last = keys.pop() ?? '';
  let place = copy as Record<string, unknown>;
  for (const key of keys) place = place[key] as Record<string, unknown>;
  if (typeof place?.[last] !== 'string') throw new Error(`The input has no id at ${path}.`);
  place[last] = value;
  return copy;
}
