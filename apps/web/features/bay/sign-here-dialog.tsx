import { useState } from 'react';
import { SelectField } from '@/components/select-field';
import { TextField } from '@/components/text-field';
import { nameOf } from '../work/names';
import type { BayDialogProps } from './bay-dialog';
import type { BayTask } from './bay-task';
import { isSameInitials } from './is-same-initials';
import { hadAHand } from './offers-for';
import { RecordingDialog } from './recording-dialog';
import { recordablePeople } from './use-record-for';

/** The second signature by somebody else than the one this device belongs to. */
export function SignHereDialog({ work, onClose, bayTask }: BayDialogProps & { bayTask: BayTask }) {
  const { replica } = work;
  const { task, title } = bayTask;
  const me = replica.me.personId;
  const [signerId, setSignerId] = useState('');
  const [typed, setTyped] = useState('');
  const [asked, setAsked] = useState(false);
  const signers = recordablePeople(replica.people).filter(
    ({ personId }) => personId !== me && !hadAHand(task, personId),
  );
  const signer = signers.find(({ personId }) => personId === signerId);
  const isProven = signer !== undefined && isSameInitials(typed, signer.initials);

  function finish() {
    if (!isProven) return setAsked(true);
    work.act('signTask', { task: task.ref, byInitials: true }, signer.personId);
    onClose();
  }

  return (
    <RecordingDialog
      title={`Sign here: ${title}`}
      onClose={onClose}
      goOn={signers.length > 0 ? { words: 'I checked it', act: finish } : null}
    >
      {signers.length > 0 ? (
        <>
          <p>Hand the phone to whoever checked it. Whoever did the work cannot sign.</p>
          <SelectField
            label="Who checked it?"
            unchosen="Choose a person"
            value={signerId}
            error={asked && !signer ? 'Choose who checked it.' : undefined}
            onChange={(event) => setSignerId(event.target.value)}
            options={signers.map(({ personId, name }) => ({ value: personId, label: name }))}
          />
          <TextField
            label="Your initials"
            hint={`The log will say: by initials, entered by ${nameOf(replica, me)}.`}
            autoComplete="off"
            autoCapitalize="characters"
            maxLength={10}
            value={typed}
            error={asked && signer && !isProven ? `These are not the initials of ${signer.name}.` : undefined}
            onChange={(event) => setTyped(event.target.value)}
          />
        </>
      ) : (
        <p>Nobody else is left who could sign. A manager can add a person by name, on the page People.</p>
      )}
    </RecordingDialog>
  );
}
