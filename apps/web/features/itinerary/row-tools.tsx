import { type KeyboardEvent, useEffect, useRef } from 'react';
import { Button } from '@/components/button';
import { Stack } from '@/components/stack';
import styles from './mend-table.module.css';
import type { RowWork } from './use-row-hands';

export interface RowToolsProps {
  /** "Row 7, SS1 Ridge". */
  name: string;
  onTurnTo: (work: RowWork | null) => void;
  onDrop: () => void;
}

/** What can be done with a row as a whole. Escape closes it. */
export function RowTools({ name, onTurnTo, onDrop }: RowToolsProps) {
  const first = useRef<HTMLButtonElement>(null);
  useEffect(() => first.current?.focus(), []);

  function onKeyDown(event: KeyboardEvent) {
    if (event.key === 'Escape') onTurnTo(null);
  }

  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for fields, these are buttons
    <div role="group" aria-label={name} className={styles.tools} onKeyDown={onKeyDown}>
      <Stack across gap="small">
        <Button ref={first} onClick={() => onTurnTo('above')}>
          New row above
        </Button>
        <Button onClick={() => onTurnTo('below')}>New row below</Button>
        <Button onClick={() => onTurnTo('anew')}>Write it anew</Button>
        <Button onClick={onDrop}>Take it out</Button>
        <Button look="quiet" onClick={() => onTurnTo(null)}>
          Close
        </Button>
      </Stack>
    </div>
  );
}
