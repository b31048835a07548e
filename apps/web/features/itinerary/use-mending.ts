import type { ItineraryText } from '@halfshaft/contract';
import { useState } from 'react';
import { type CellPlace, mendCell } from './mend-cell';

export interface Mending {
  mend: (place: CellPlace, written: string) => void;
  /** Brings back the text as it was before its cells were written in; null where none was, or it was typed in since. */
  putBack: (() => void) | null;
}

export interface MendedText {
  source: string;
  /** As it is in the form at this moment; null where a setting cannot be read. */
  read: () => ItineraryText | null;
  write: (source: string) => void;
}

/** Writes cells into the pasted text, which stays what is saved. */
export function useMending({ source, read, write }: MendedText): Mending {
  const [mended, setMended] = useState<{ before: string; after: string } | null>(null);
  const before = mended !== null && mended.after === source ? mended.before : null;

  function mend(place: CellPlace, written: string) {
    const text = read();
    const after = text && mendCell(text, place, written);
    if (after === null) return;
    setMended({ before: before ?? text?.source ?? '', after });
    write(after);
  }

  return { mend, putBack: before === null ? null : () => write(before) };
}
