import { useState } from 'react';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import type { BayDialogProps } from './bay-dialog';
import type { BayTask } from './bay-task';
import { QuickWords } from './quick-words';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

const REASONS = ['Not right', 'Came off again', 'Must be done after all'];
const reopenDraft = z.object({ reason: z.string() });

/** Whoever finds work not right says so at once. */
export function ReopenDialog({ work, by, onClose, bayTask }: BayDialogProps & { bayTask: BayTask }) {
  const { task, title } = bayTask;
  const [draft, setDraft, clearDraft] = useDraft(`reopen.${task.id}`, reopenDraft, { reason: '' });
  const [asked, setAsked] = useState(false);
  const reason = draft.reason.trim();

  function finish() {
    if (reason === '') return setAsked(true);
    work.act('reopenTask', { task: task.ref, reason }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog
      title={`Open again: ${title}`}
      onClose={onClose}
      goOn={{ words: 'Open again', act: finish }}
    >
      <TextField
        label="Why?"
        maxLength={300}
        value={draft.reason}
        error={asked && reason === '' ? 'A reason is missing. Say why in a few words.' : undefined}
        onChange={(event) => setDraft({ reason: event.target.value })}
      />
      <QuickWords words={REASONS} onChoose={(words) => setDraft({ reason: words })} />
    </RecordingDialog>
  );
}
