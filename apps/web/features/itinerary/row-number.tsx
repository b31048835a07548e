import type { KeyboardEvent } from 'react';
import { rowName } from './mend-row';
import styles from './mend-table.module.css';
import type { RowToMendProps } from './row-to-mend';

/**
 * The number of a row opens what can be done with the row. One of them is reached by Tab; arrows go from row to row,
 * Insert begins a row below, Delete takes the row out.
 */
export function RowNumber({ row, rowIndex, hands, isStop }: RowToMendProps) {
  const isOpen = hands.open?.rowIndex === rowIndex;

  function onKeyDown(event: KeyboardEvent<HTMLButtonElement>) {
    const step = STEPS[event.key];
    if (step) goTo(event.currentTarget, step);
    else if (event.key === 'Insert') hands.turnTo(rowIndex, 'below');
    else if (event.key === 'Delete') hands.drop(rowIndex);
    else return;
    event.preventDefault();
  }

  return (
    <button
      type="button"
      className={styles.numberButton}
      data-row={rowIndex}
      tabIndex={isStop ? 0 : -1}
      aria-expanded={isOpen}
      aria-keyshortcuts="Insert Delete"
      aria-label={`Change ${rowName(row).replace(/^R/, 'r')}`}
      onKeyDown={onKeyDown}
      onClick={() => hands.turnTo(rowIndex, isOpen ? null : 'choose')}
    >
      <span className={styles.rowWord}>Row </span>
      {row.sourceRow}
    </button>
  );
}

type Step = (at: number, count: number) => number;

const STEPS: Partial<Record<string, Step>> = {
  ArrowDown: (at, count) => Math.min(at + 1, count - 1),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, count) => count - 1,
};

function goTo(from: HTMLElement, step: Step): void {
  const numbers = [...(from.closest('table')?.querySelectorAll<HTMLElement>('[data-row]') ?? [])];
  numbers[step(numbers.indexOf(from), numbers.length)]?.focus();
}
