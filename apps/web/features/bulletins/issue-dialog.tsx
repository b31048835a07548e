import type { Problem } from '@halfshaft/contract';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { SaveTrouble } from '../events/trouble';

export interface IssueDialogProps {
  open: boolean;
  number: number;
  /** How many sentences it has. */
  changes: number;
  busy: boolean;
  problem: Problem | null;
  onClose: () => void;
  onIssue: () => void;
}

/** Asked once more, since what teams have been told cannot be taken back. */
export function IssueDialog({ open, number, changes, busy, problem, onClose, onIssue }: IssueDialogProps) {
  const what = changes === 1 ? '1 change' : `${changes} changes`;
  return (
    <Dialog
      open={open}
      onClose={onClose}
      title={`Issue bulletin ${number}?`}
      closeWords="Not yet"
      actions={
        <Button look="main" busy={busy} busyWords="Issuing …" onClick={onIssue}>
          Issue it
        </Button>
      }
    >
      <Stack>
        <p>
          Every team that took the event over is told of {changes === 0 ? 'your note' : what} and can accept
          it. A bulletin that was issued cannot be changed or taken back; a mistake is put right by the next
          one.
        </p>
        <SaveTrouble problem={problem} />
      </Stack>
    </Dialog>
  );
}
