import type { Finding } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { recordPhoto } from '../photos/record-photo';
import { newId } from '../work/new-id';
import { findingInWords, snagOfFinding } from '../work/task-in-words';
import type { BayDialogProps } from './bay-dialog';
import type { BayTask } from './bay-task';
import { closeDraft, EMPTY_DRAFT } from './close-draft';
import { FindingForm } from './finding-form';
import { FindingList } from './finding-list';
import { closeDraftKey } from './is-begun';
import type { CloseStep } from './open-dialog';
import { readReadings, slotsOf } from './read-typed';
import { ReadingsPad } from './readings-pad';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

export interface CloseDialogProps extends BayDialogProps {
  bayTask: BayTask;
  firstStep: CloseStep;
}

/** Closing with what is out of order and what was measured. Everything typed is kept until it is done. */
export function CloseDialog({ work, visit, by, onClose, bayTask, firstStep }: CloseDialogProps) {
  const { task, title, looks, positions, place } = bayTask;
  const [draft, setDraft, clearDraft] = useDraft(closeDraftKey(task.id), closeDraft, EMPTY_DRAFT);
  const [step, setStep] = useState(firstStep);
  const [warned, setWarned] = useState(false);
  const slots = slotsOf(bayTask.readings);
  const read = readReadings(slots, draft.typed);
  const wrong = Object.keys(read.problems).length > 0;

  /** At once, while the finding waits for the card to be closed: a photo is a fact whatever becomes of that. */
  function keepPhotos(finding: Finding, files: readonly Uint8Array<ArrayBuffer>[]) {
    const words = findingInWords(finding, looks).slice(0, 300);
    return Promise.all(files.map((file) => recordPhoto(work, by, { task: task.ref, words, file })));
  }

  function addFinding(finding: Finding, raiseSnag: boolean) {
    setDraft({ ...draft, findings: [...draft.findings, finding] });
    setStep('sheet');
    if (!raiseSnag) return;
    const words = snagOfFinding(findingInWords(finding, looks), title);
    const { entryId } = visit.entry;
    const snag = { snagId: newId(), entryId, serviceId: visit.service.id, place, words, urgent: false };
    work.act('raiseSnag', snag, by);
  }

  function finish() {
    if (wrong || (read.missing.length > 0 && !warned)) return setWarned(true);
    const said = { task: task.ref, findings: draft.findings, readings: read.readings };
    if (!work.act('closeTask', said, by).ok) return onClose();
    clearDraft();
    onClose();
  }

  if (step === 'finding') {
    return (
      <RecordingDialog title={`${title}: what is wrong?`} onClose={onClose} closeWords="Back to the list">
        <FindingForm
          draftKey={`finding.${task.id}`}
          looks={looks}
          positions={positions}
          asksNewPart={bayTask.asksNewPart}
          onAdd={addFinding}
          onPhotos={keepPhotos}
        />
      </RecordingDialog>
    );
  }
  const missing = read.missing.map(({ spec, position }) => [spec.name, position].filter(Boolean).join(' '));
  return (
    <RecordingDialog
      title={title}
      onClose={onClose}
      goOn={{ words: warned && missing.length > 0 && !wrong ? 'Done all the same' : 'Done', act: finish }}
    >
      <FindingList
        findings={draft.findings}
        looks={looks}
        onRemove={(index) =>
          setDraft({ ...draft, findings: draft.findings.filter((_, other) => other !== index) })
        }
      />
      <ReadingsPad
        slots={slots}
        typed={draft.typed}
        problems={warned ? read.problems : {}}
        lastRead={bayTask.lastRead}
        findings={draft.findings}
        onType={(key, text) => setDraft({ ...draft, typed: { ...draft.typed, [key]: text } })}
        onOffer={(finding) => setDraft({ ...draft, findings: [...draft.findings, finding] })}
      />
      {warned && missing.length > 0 ? (
        <Notice kind="warning" title="Not measured" spoken>
          <p>
            {missing.join(', ')}. Type it in, or press Done all the same: the log then says it is missing.
          </p>
        </Notice>
      ) : null}
      <div>
        <Button onClick={() => setStep('finding')}>Something's wrong</Button>
      </div>
    </RecordingDialog>
  );
}
