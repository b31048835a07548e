import { useCallback, useState } from 'react';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { readStored, removeStored, writeStored } from '@/lib/storage';

/** Tells whether what was kept is a draft of this kind: a zod schema, or `textFields`. */
export interface DraftShape<Draft> {
  safeParse(stored: unknown): { success: true; data: Draft } | { success: false };
}

/**
 * Something half filled in, kept on this phone until it is done or thrown away: a reload, a call or an empty battery
 * loses nothing. Stored beside the kept forms, so that signing out forgets it too.
 */
export function useDraft<Draft>(
  key: string,
  shape: DraftShape<Draft>,
  empty: NoInfer<Draft>,
): [Draft, (draft: Draft) => void, () => void] {
  const storageKey = KEPT_FORMS + key;
  const [draft, setDraft] = useState(() => readDraft(storageKey, shape) ?? empty);
  const write = useCallback(
    (next: Draft) => {
      setDraft(next);
      writeStored(storageKey, next);
    },
    [storageKey],
  );
  const clear = useCallback(() => removeStored(storageKey), [storageKey]);
  return [draft, write, clear];
}

/** What was kept under a key, or null when there is nothing of this shape. */
function readDraft<Draft>(storageKey: string, shape: DraftShape<Draft>): Draft | null {
  const stored = shape.safeParse(readStored(storageKey));
  return stored.success ? stored.data : null;
}
