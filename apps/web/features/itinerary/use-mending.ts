import type { ItineraryText } from '@halfshaft/contract';
import type { RowEdit } from '@halfshaft/itinerary';
import { useState } from 'react';
import { type CellPlace, mendCell } from './mend-cell';
import { withoutRow, withRow } from './mend-row';

export interface Mending {
  mend: (place: CellPlace, written: string) => void;
  /** False when what was written is no row. */
  putRow: (edit: RowEdit) => boolean;
  dropRow: (rowIndex: number) => void;
  /** Where a row was taken out last, as long as nothing was written since. */
  dropped: { rowIndex: number; putBack: () => void } | null;
  /** Brings back the text as it was before its cells were written in; null where none was, or it was typed in since. */
  putBack: (() => void) | null;
}

export interface MendedText {
  source: string;
  /** As it is in the form at this moment; null where a setting cannot be read. */
  read: () => ItineraryText | null;
  write: (source: string) => void;
}

interface Mended {
  /** As it was pasted. */
  first: string;
  after: string;
  dropped: { rowIndex: number; before: string } | null;
}

/** Writes cells and rows into the pasted text, which stays what is saved. */
export function useMending({ source, read, write }: MendedText): Mending {
  const [mended, setMended] = useState<Mended | null>(null);
  const current = mended?.after === source ? mended : null;
  const dropped = current?.dropped ?? null;

  function change(make: (text: ItineraryText) => string | null, droppedRow: number | null = null): boolean {
    const text = read();
    const after = text && make(text);
    if (!text || after === null) return false;
    setMended({
      first: current?.first ?? text.source,
      after,
      dropped: droppedRow === null ? null : { rowIndex: droppedRow, before: text.source },
    });
    write(after);
    return true;
  }

  return {
    mend: (place, written) => change((text) => mendCell(text, place, written)),
    putRow: (edit) => change((text) => withRow(text, edit)),
    dropRow: (rowIndex) => change((text) => withoutRow(text, rowIndex), rowIndex),
    dropped: dropped && {
      rowIndex: dropped.rowIndex,
      putBack: () => change(() => dropped.before),
    },
    putBack: current === null || current.first === source ? null : () => write(current.first),
  };
}
