import type { ReadTable } from '@halfshaft/itinerary';
import { type KeyboardEvent, useEffect, useRef, useState } from 'react';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { headingName } from './heading-name';
import { rowName } from './mend-row';
import styles from './mend-table.module.css';
import type { RowWork } from './use-row-hands';

export interface RowWriterProps {
  table: ReadTable;
  rowIndex: number;
  work: Exclude<RowWork, 'choose'>;
  /** False when the cells make no row. */
  onPut: (cells: string[]) => boolean;
  onLeave: () => void;
}

const NO_ROW = 'This is no row of the itinerary yet. Write at least its TC or SS and its place.';

/** A row to be written: a field for each column. Enter puts it in, Escape leaves it. */
export function RowWriter({ table, rowIndex, work, onPut, onLeave }: RowWriterProps) {
  const row = table.rows[rowIndex];
  const start = table.headings.map((_, index) => (work === 'anew' ? (row?.cells[index]?.text ?? '') : ''));
  const [cells, setCells] = useState(start);
  const [isRefused, setRefused] = useState(false);
  const place = useRef<HTMLFieldSetElement>(null);
  useEffect(() => place.current?.querySelector('input')?.focus(), []);

  function put() {
    setRefused(!onPut(cells));
  }

  function onKeyDown(event: KeyboardEvent) {
    if (event.key === 'Escape') onLeave();
    const isInField = event.target instanceof HTMLInputElement;
    if (event.key !== 'Enter' || !isInField || event.nativeEvent.isComposing) return;
    // Enter would save the whole form.
    event.preventDefault();
    put();
  }

  return (
    <fieldset className={styles.writer} ref={place} onKeyDown={onKeyDown}>
      <legend className={styles.writerName}>{titleOf(work, row ? rowName(row) : '')}</legend>
      <div className={styles.fields}>
        {table.headings.map((heading, index) =>
          heading.meaning === 'surplus' ? null : (
            <TextField
              // biome-ignore lint/suspicious/noArrayIndexKey: a column has nothing but its place
              key={index}
              label={headingName(heading, index)}
              autoComplete="off"
              autoCapitalize="off"
              spellCheck={false}
              value={cells[index] ?? ''}
              onChange={(event) => setCells(cells.with(index, event.target.value))}
            />
          ),
        )}
      </div>
      {isRefused ? (
        <Notice kind="problem" title="Not put in" spoken>
          {NO_ROW}
        </Notice>
      ) : null}
      <Stack across gap="small">
        <Button onClick={put}>{work === 'anew' ? 'Write the row' : 'Put the row in'}</Button>
        <Button look="quiet" onClick={onLeave}>
          Leave it
        </Button>
      </Stack>
    </fieldset>
  );
}

function titleOf(work: RowWriterProps['work'], name: string): string {
  if (work === 'anew') return `${name}, written anew`;
  return `New row ${work} ${name.replace(/^R/, 'r')}`;
}
