import { positionsOfCard } from '@halfshaft/lifing';
import type { Finding, PersonId } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import { FindingForm } from '../bay/finding-form';
import { FindingList } from '../bay/finding-list';
import { recordablePeople } from '../bay/use-record-for';
import { nameOf } from '../work/names';
import { taskInWords } from '../work/task-in-words';
import type { LoadedWork } from '../work/work-page';
import { RecordReadings } from './record-readings';
import { type RowDraft, readRow } from './row-draft';
import styles from './sheet.module.css';
import type { SheetRow } from './sheet-rows';

const WHAT = [
  { value: 'done', label: 'Done' },
  { value: 'left', label: 'Left' },
  { value: '', label: 'Empty' },
];

interface RecordRowProps {
  work: LoadedWork;
  row: SheetRow;
  columnPerson: PersonId | null;
  draft: RowDraft;
  /** Recording was tried: say what stands in the way. */
  warned: boolean;
  onChange: (draft: RowDraft) => void;
}

/** One row of the paper: one tap says done or left; the rest only where the paper has something. */
export function RecordRow({ work, row, columnPerson, draft, warned, onChange }: RecordRowProps) {
  const { replica } = work;
  const read = readRow(row, draft, columnPerson);
  const people = recordablePeople(replica.people).map(({ personId, name, initials }) => ({
    value: personId,
    label: `${name} (${initials})`,
  }));
  const words = {
    nameOf: (id: PersonId) => nameOf(replica, id),
    me: replica.me.personId,
    confirmedSeq: work.confirmedSeq,
  };
  const title = `${row.number} ${row.title}`;
  return (
    <section className={styles.recordRow} aria-label={title}>
      <h3 className={styles.recordName}>
        <span className={styles.number}>{row.number}</span>
        {row.title}
      </h3>
      {row.task.state === 'open' ? null : <p>In the log: {taskInWords(row.task, words)}.</p>}
      <ChoiceGroup
        label="On the paper"
        across
        choices={WHAT}
        chosen={[draft.what]}
        onChange={({ target }) => {
          const what = WHAT.find(({ value }) => value === target.value)?.value;
          if (what === 'done' || what === 'left' || what === '') onChange({ ...draft, what });
        }}
      />
      {draft.what === '' ? null : (
        <div className={styles.fields}>
          <SelectField
            label="Initials of"
            unchosen="Choose"
            options={people}
            value={read.by}
            onChange={({ target }) => onChange({ ...draft, by: target.value })}
          />
          {draft.what === 'done' && row.card?.needsSignature ? (
            <SelectField
              label="Second signature in ink"
              unchosen="None on the paper"
              options={people}
              value={draft.signedBy}
              onChange={({ target }) => onChange({ ...draft, signedBy: target.value })}
            />
          ) : null}
          {draft.what === 'left' ? (
            <TextField
              label="Why"
              maxLength={300}
              value={draft.reason}
              onChange={({ target }) => onChange({ ...draft, reason: target.value })}
            />
          ) : null}
        </div>
      )}
      {draft.what === 'done' ? (
        <>
          <RecordReadings row={row} draft={draft} read={read} onChange={onChange} />
          <Exceptions row={row} draft={draft} title={title} onChange={onChange} />
        </>
      ) : null}
      {warned && draft.what !== '' && read.problems.length > 0 ? (
        <p role="alert">
          <strong>Not recorded:</strong> {read.problems.join(' ')}
        </p>
      ) : null}
    </section>
  );
}

type ExceptionsProps = Pick<RecordRowProps, 'row' | 'draft' | 'onChange'> & { title: string };

function Exceptions({ row, draft, title, onChange }: ExceptionsProps) {
  const [open, setOpen] = useState(false);
  const looks = row.card?.looks ?? [];
  const positions = row.card ? positionsOfCard(row.card) : [];
  function add(finding: Finding, raiseSnag: boolean) {
    onChange({ ...draft, findings: [...draft.findings, { ...finding, raiseSnag }] });
    setOpen(false);
  }
  return (
    <>
      <FindingList
        findings={draft.findings}
        looks={looks}
        onRemove={(index) =>
          onChange({ ...draft, findings: draft.findings.filter((_, other) => other !== index) })
        }
      />
      <div>
        <Button onClick={() => setOpen(true)}>The paper says something's wrong</Button>
      </div>
      {open ? (
        <Dialog
          open
          onClose={() => setOpen(false)}
          title={`${title}: what is wrong?`}
          closeWords="Back to the sheet"
        >
          <FindingForm
            draftKey={`paper.${row.task.id}`}
            looks={looks}
            positions={positions}
            asksNewPart={row.card?.fitsNewPart === false}
            onAdd={add}
          />
        </Dialog>
      ) : null}
    </>
  );
}
