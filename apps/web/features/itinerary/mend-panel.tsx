import type { ItineraryProblem, LeftOutLine, ReadTable } from '@halfshaft/itinerary';
import { useEffect, useRef } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Stack } from '@/components/stack';
import { VisuallyHidden } from '@/components/visually-hidden';
import { placeKey } from './cell-box';
import { cellsToMend, nextToMend } from './cells-to-mend';
import type { CellPlace } from './mend-cell';
import styles from './mend-panel.module.css';
import { MendTable } from './mend-table';
import { ProblemList } from './problem-list';
import type { Mending } from './use-mending';
import { useRowHands } from './use-row-hands';

export interface MendPanelProps {
  /** What was found, counted: read out at each change. */
  words: string;
  problems: readonly ItineraryProblem[];
  /** Null where nothing could be made of the text, or there is none. */
  table: ReadTable | null;
  mending: Mending;
  onGoToRow: (row: number) => void;
}

/** What is left to mend, and the table as understood to mend it in. Enter or Tab leads from cell to cell. */
export function MendPanel({ words, problems, table, mending, onGoToRow }: MendPanelProps) {
  const panel = useRef<HTMLDivElement>(null);
  const status = useRef<HTMLParagraphElement>(null);
  const goesOnFrom = useRef<CellPlace | null>(null);
  const hands = useRowHands(panel, table, mending);

  useEffect(() => {
    // Only after Enter, and once the text has been read again.
    const from = goesOnFrom.current;
    goesOnFrom.current = null;
    if (from) focusNext(panel.current, table, from);
  }, [table]);

  const mendTable = table ? (
    <MendTable
      table={table}
      hands={hands}
      onMend={mending.mend}
      onGoOn={(from, willBeRead) => {
        if (willBeRead) goesOnFrom.current = from;
        else focusNext(panel.current, table, from);
      }}
      onGoToRow={onGoToRow}
    />
  ) : null;

  return (
    <div className={styles.panel} ref={panel}>
      <p role="status" tabIndex={-1} ref={status} className={styles.status}>
        {words}
      </p>
      {table && cellsToMend(table).length > 0 ? (
        <p className={styles.hint}>
          Write over what is wrong; Enter goes on to the next. Press a sentence to see its row in the text, or
          the number of a row to put one in or take it out.
        </p>
      ) : null}
      <p role="status">
        <VisuallyHidden>{hands.news}</VisuallyHidden>
      </p>
      <ProblemList problems={table ? table.problems : problems} onGoToRow={onGoToRow} />
      {problems.length > 0 || hands.droppedAt !== null || mendTable === null ? (
        mendTable
      ) : (
        <Disclosure summary="The table, row by row">
          <p className={styles.hint}>
            Press the number of a row to put one in, write it anew or take it out.
          </p>
          {mendTable}
        </Disclosure>
      )}
      {table && table.leftOut.length > 0 ? <LeftOut lines={table.leftOut} /> : null}
      {mending.putBack ? (
        <Stack across>
          <Button
            look="quiet"
            onClick={() => {
              mending.putBack?.();
              // The button goes away, so the keyboard needs another place.
              status.current?.focus();
            }}
          >
            Put the text back as it was pasted
          </Button>
        </Stack>
      ) : null}
    </div>
  );
}

/** To the next cell with a problem; to the words on top when all is mended, since the box is gone. */
function focusNext(panel: HTMLElement | null, table: ReadTable | null, from: CellPlace): void {
  const next = table && nextToMend(table, from);
  const box = next && panel?.querySelector<HTMLInputElement>(`[data-place="${placeKey(next)}"]`);
  if (box) {
    box.focus();
    box.select();
  } else panel?.querySelector<HTMLElement>('[role="status"]')?.focus();
}

const MOST_LINES = 100;

/** So that nothing of the text disappears unseen. */
function LeftOut({ lines }: { lines: readonly LeftOutLine[] }) {
  const count = lines.length === 1 ? '1 line' : `${lines.length} lines`;
  return (
    <Disclosure summary={`Left out: ${count} of titles, page lines or headings repeated`}>
      <ul className={styles.lines}>
        {lines.slice(0, MOST_LINES).map((line) => (
          <li key={line.sourceRow}>
            Row {line.sourceRow}: {line.text.trim()}
          </li>
        ))}
      </ul>
    </Disclosure>
  );
}
