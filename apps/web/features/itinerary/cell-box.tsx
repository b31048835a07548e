import type { ReadCell } from '@halfshaft/itinerary';
import { type KeyboardEvent, useState } from 'react';
import fieldStyles from '@/components/field.module.css';
import { classNames } from '@/lib/class-names';
import { leftToMend } from './cells-to-mend';
import type { CellPlace } from './mend-cell';
import styles from './mend-table.module.css';

export interface CellBoxProps {
  cell: ReadCell;
  place: CellPlace;
  /** "SS km, row 5": the cell for a screen reader. */
  name: string;
  /** Ids of the sentences that say what is wrong. */
  describedBy: string;
  onMend: (place: CellPlace, written: string) => void;
  /** Enter was pressed: the keyboard goes on, at once or when the table has been read again. */
  onGoOn: (from: CellPlace, willBeRead: boolean) => void;
}

const SHORTEST = 6;

/** One cell to be written anew. Enter and leaving it write it, Escape takes back what was typed. */
export function CellBox({ cell, place, name, describedBy, onMend, onGoOn }: CellBoxProps) {
  const [typed, setTyped] = useState(cell.text);
  const [shown, setShown] = useState(cell.text);
  if (shown !== cell.text) {
    setShown(cell.text);
    setTyped(cell.text);
  }

  function onKeyDown(event: KeyboardEvent<HTMLInputElement>) {
    if (event.key === 'Escape') setTyped(cell.text);
    if (event.key !== 'Enter' || event.nativeEvent.isComposing) return;
    // Enter would save the whole form.
    event.preventDefault();
    const isChanged = typed.trim() !== cell.text;
    onGoOn(place, isChanged);
    if (isChanged) onMend(place, typed);
  }

  return (
    <input
      type="text"
      className={classNames(fieldStyles.input, styles.box)}
      aria-label={name}
      aria-describedby={describedBy}
      aria-invalid={leftToMend(cell.problems) > 0 ? true : undefined}
      autoComplete="off"
      autoCapitalize="off"
      spellCheck={false}
      enterKeyHint="next"
      size={Math.max(SHORTEST, typed.length)}
      data-place={placeKey(place)}
      value={typed}
      onChange={(event) => setTyped(event.target.value)}
      onKeyDown={onKeyDown}
      onBlur={() => {
        if (typed.trim() !== cell.text) onMend(place, typed);
      }}
    />
  );
}

/** Finds the box of a place on the page. */
export function placeKey({ rowIndex, column }: CellPlace): string {
  return `${rowIndex ?? 'heading'}.${column}`;
}
