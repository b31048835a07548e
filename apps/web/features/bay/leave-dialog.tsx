import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { TextField } from '@/components/text-field';
import * as z from '@/lib/zod';
import type { BayDialogProps } from './bay-dialog';
import type { BayTask } from './bay-task';
import { QuickWords } from './quick-words';
import { RecordingDialog } from './recording-dialog';
import { useDraft } from './use-draft';

const HOW = ['carryOverTask', 'dropTask'] as const;
const CHOICES = [
  { value: 'carryOverTask', label: 'Carry over', hint: 'It stays to be done at a later service.' },
  { value: 'dropTask', label: 'Not needed', hint: 'It need not be done at this service.' },
];
const REASONS = ['No time', 'Part missing', 'Tool missing', 'Too hot', 'Nobody free'];

const leaveDraft = z.object({ how: z.enum(HOW), reason: z.string() });

/** "Can't do it": carried over or not needed, and why. */
export function LeaveDialog({ work, by, onClose, bayTask }: BayDialogProps & { bayTask: BayTask }) {
  const { task, title } = bayTask;
  const [draft, setDraft, clearDraft] = useDraft(`leave.${task.id}`, leaveDraft, {
    how: 'carryOverTask',
    reason: '',
  });
  const [asked, setAsked] = useState(false);
  const reason = draft.reason.trim();

  function finish() {
    if (reason === '') return setAsked(true);
    work.act(draft.how, { task: task.ref, reason }, by);
    clearDraft();
    onClose();
  }

  return (
    <RecordingDialog
      title={`Can't do: ${title}`}
      onClose={onClose}
      goOn={{ words: draft.how === 'dropTask' ? 'Not needed' : 'Carry over', act: finish }}
    >
      <ChoiceGroup
        label="What becomes of it?"
        choices={CHOICES}
        chosen={[draft.how]}
        onChange={(event) =>
          setDraft({ ...draft, how: HOW.find((each) => each === event.target.value) ?? 'carryOverTask' })
        }
      />
      <TextField
        label="Why?"
        maxLength={300}
        value={draft.reason}
        error={asked && reason === '' ? 'A reason is missing. Say why in a few words.' : undefined}
        onChange={(event) => setDraft({ ...draft, reason: event.target.value })}
      />
      <QuickWords words={REASONS} onChoose={(words) => setDraft({ ...draft, reason: words })} />
    </RecordingDialog>
  );
}
