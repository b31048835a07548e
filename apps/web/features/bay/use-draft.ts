import { useCallback, useState } from 'react';
import type { z } from 'zod';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { readStored, removeStored, writeStored } from '@/lib/storage';

/**
 * Something half filled in, kept on this phone until it is done or thrown away: a reload, a call or an empty battery
 * loses nothing. Stored beside the kept forms, so that signing out forgets it too.
 */
export function useDraft<Shape extends z.ZodType>(
  key: string,
  shape: Shape,
  empty: z.output<Shape>,
): [z.output<Shape>, (draft: z.output<Shape>) => void, () => void] {
  const storageKey = KEPT_FORMS + key;
  const [draft, setDraft] = useState(() => readDraft(storageKey, shape) ?? empty);
  const write = useCallback(
    (next: z.output<Shape>) => {
      setDraft(next);
      writeStored(storageKey, next);
    },
    [storageKey],
  );
  const clear = useCallback(() => removeStored(storageKey), [storageKey]);
  return [draft, write, clear];
}

/** What was kept under a key, or null when there is nothing of this shape. */
export function readDraft<Shape extends z.ZodType>(storageKey: string, shape: Shape): z.output<Shape> | null {
  const stored = shape.safeParse(readStored(storageKey));
  return stored.success ? stored.data : null;
}
