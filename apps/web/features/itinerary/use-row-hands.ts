import type { ReadTable } from '@halfshaft/itinerary';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { rowName } from './mend-row';
import type { Mending } from './use-mending';

/** What is done at one row: its tools stand open, or a row is being written. */
export type RowWork = 'choose' | 'above' | 'below' | 'anew';

/** Putting rows in and taking them out: what stands open, what was told, and the ways on. */
export interface RowHands {
  open: { rowIndex: number; work: RowWork } | null;
  /** The row whose number the Tab key reaches; arrows go on from there. */
  stop: number;
  /** For a screen reader: what was done last. */
  news: string;
  droppedAt: number | null;
  /** Null closes what stands open at the row. */
  turnTo: (rowIndex: number, work: RowWork | null) => void;
  reach: (rowIndex: number) => void;
  /** False when the cells make no row. */
  put: (rowIndex: number, work: RowWork, cells: string[]) => boolean;
  drop: (rowIndex: number) => void;
  putBack: () => void;
}

type Landing = { at: 'slip' | 'row' | 'undo'; rowIndex: number; told: (name: string) => string };

/** Keeps the rows' tools. Once the changed text has been read again, the keyboard goes where the change was. */
export function useRowHands(
  panel: RefObject<HTMLElement | null>,
  table: ReadTable | null,
  mending: Mending,
): RowHands {
  const [open, setOpen] = useState<RowHands['open']>(null);
  const [stop, setStop] = useState(0);
  const [news, setNews] = useState('');
  const landing = useRef<Landing | null>(null);
  const nameOf = (rowIndex: number) => {
    const row = table?.rows[rowIndex];
    return row ? rowName(row) : 'The row';
  };

  useEffect(() => {
    const to = landing.current;
    landing.current = null;
    if (!to) return;
    const row = table?.rows[to.rowIndex];
    setNews(to.told(row ? rowName(row) : 'The row'));
    landOn(panel.current, to);
  }, [table, panel]);

  function go(to: Landing, change: () => boolean): boolean {
    landing.current = to;
    const isDone = change();
    if (isDone) setOpen(null);
    else landing.current = null;
    return isDone;
  }

  return {
    open,
    stop,
    news,
    droppedAt: mending.dropped?.rowIndex ?? null,
    turnTo: (rowIndex, work) => {
      setStop(rowIndex);
      setOpen(work && { rowIndex, work });
      if (work === null) numberOf(panel.current, rowIndex)?.focus();
    },
    reach: setStop,
    put: (rowIndex, work, cells) => {
      const at = work === 'below' ? rowIndex + 1 : rowIndex;
      const instead = work === 'anew';
      const told = (name: string) => (instead ? `${name}, is written anew.` : `${name}, is put in.`);
      setStop(at);
      return go({ at: 'slip', rowIndex: at, told }, () => mending.putRow({ rowIndex: at, cells, instead }));
    },
    drop: (rowIndex) => {
      const name = nameOf(rowIndex);
      go({ at: 'undo', rowIndex, told: () => `${name}, is taken out.` }, () => {
        mending.dropRow(rowIndex);
        return true;
      });
    },
    putBack: () => {
      const { dropped } = mending;
      if (!dropped) return;
      const { rowIndex } = dropped;
      setStop(rowIndex);
      go({ at: 'row', rowIndex, told: (name) => `${name}, is back.` }, () => {
        dropped.putBack();
        return true;
      });
    },
  };
}

const PLACES: Record<Landing['at'], (rowIndex: number) => string[]> = {
  // What is wrong in a new row, before the row.
  slip: (rowIndex) => [`[data-place^="${rowIndex}."][aria-invalid]`, `[data-row="${rowIndex}"]`],
  row: (rowIndex) => [`[data-row="${rowIndex}"]`],
  undo: () => ['[data-put-back]'],
};

/** To the first of its places that is there; else to the words on top. */
function landOn(panel: HTMLElement | null, { at, rowIndex }: Landing): void {
  const places = [...PLACES[at](rowIndex), '[role="status"]'];
  const found = places.map((one) => panel?.querySelector<HTMLElement>(one));
  found.find((one) => one)?.focus();
}

export function numberOf(panel: HTMLElement | null, rowIndex: number): HTMLElement | null {
  return panel?.querySelector<HTMLElement>(`[data-row="${rowIndex}"]`) ?? null;
}
