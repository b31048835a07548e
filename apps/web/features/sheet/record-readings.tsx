import { ChoiceGroup } from '@/components/choice-group';
import { NumberField } from '@/components/number-field';
import { type ReadingSlot, slotsOf } from '../bay/read-typed';
import type { ReadRow, RowDraft } from './row-draft';
import styles from './sheet.module.css';
import type { SheetRow } from './sheet-rows';

interface RecordReadingsProps {
  row: SheetRow;
  draft: RowDraft;
  read: ReadRow;
  onChange: (draft: RowDraft) => void;
}

/** A box for each reading and place, in the order of the paper. */
export function RecordReadings({ row, draft, read, onChange }: RecordReadingsProps) {
  const slots = slotsOf(row.card?.readings ?? []);
  const type = (key: string, text: string) => onChange({ ...draft, typed: { ...draft.typed, [key]: text } });
  if (slots.length === 0) return null;
  return (
    <>
      <div className={styles.fields}>
        {slots.map((slot) =>
          slot.spec.kind === 'passFail' ? (
            <ChoiceGroup
              key={slot.key}
              label={slotName(slot)}
              across
              choices={[
                { value: '1', label: 'passed' },
                { value: '0', label: 'failed' },
              ]}
              chosen={[draft.typed[slot.key] ?? '']}
              onChange={({ target }) => type(slot.key, target.value)}
            />
          ) : (
            <NumberField
              key={slot.key}
              label={slotName(slot)}
              unit={slot.spec.unit}
              hint={row.lastRead.get(slot.key)?.words}
              error={read.typedProblems[slot.key]}
              value={draft.typed[slot.key] ?? ''}
              onChange={({ target }) => type(slot.key, target.value)}
            />
          ),
        )}
      </div>
      {read.missing.length > 0 ? (
        <p className={styles.hint}>
          If they stay empty the log says they are missing: {read.missing.join(', ')}.
        </p>
      ) : null}
    </>
  );
}

function slotName({ spec, position }: ReadingSlot): string {
  return position === null ? spec.name : `${spec.name} ${position}`;
}
