'use client';

import { type EventReplica, setTyreAllowanceInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { NumberField } from '@/components/number-field';
import { Sheet } from '@/components/sheet';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';

interface AllowanceSheetProps {
  teamId: string;
  event: EventReplica;
  mayManage: boolean;
}

/** How many tyres each car may use at this event, and for managers the way to set it. */
export function AllowanceSheet({ teamId, event, mayManage }: AllowanceSheetProps) {
  const [editing, setEditing] = useState(false);
  const { tyreAllowance } = event;
  return (
    <Sheet
      title="Tyre allowance"
      aside={
        mayManage ? (
          <Button look="quiet" aria-label="Change the tyre allowance" onClick={() => setEditing(true)}>
            Change
          </Button>
        ) : null
      }
    >
      <p>
        {tyreAllowance === null
          ? 'No allowance is set.'
          : `${tyreAllowance === 1 ? '1 tyre' : `${tyreAllowance} tyres`} for each car.`}{' '}
        The event’s regulations decide how many a car may use, and what counts.
      </p>
      {editing ? <EditAllowance {...{ teamId, event }} onClose={() => setEditing(false)} /> : null}
    </Sheet>
  );
}

const field = setTyreAllowanceInput.shape.tyreAllowance;

function EditAllowance({
  teamId,
  event,
  onClose,
}: Omit<AllowanceSheetProps, 'mayManage'> & { onClose: () => void }) {
  const { eventId } = event;
  const [typed, setTyped] = useState(event.tyreAllowance === null ? '' : String(event.tyreAllowance));
  const [error, setError] = useState<string>();
  const queries = useQueryClient();
  const update = useMutation(api.event.setTyreAllowance.mutationOptions());

  async function save() {
    const read = field.safeParse(typed.trim() === '' ? null : Number(typed));
    setError(read.success ? undefined : read.error.issues[0]?.message);
    if (!read.success) return;
    try {
      await update.mutateAsync({ teamId, eventId, tyreAllowance: read.data });
      onClose();
      await queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) });
    } catch {
      // Told below, by the mutation's own error.
    }
  }

  return (
    <Dialog
      open
      onClose={onClose}
      title="Tyre allowance"
      actions={
        <Button look="main" onClick={save} busy={update.isPending} busyWords="Saving …">
          Save
        </Button>
      }
    >
      <NumberField
        label="Tyres for each car"
        hint="As the event’s regulations say. Empty: they set no number."
        optional
        whole
        error={error}
        value={typed}
        onChange={(change) => setTyped(change.target.value)}
      />
      <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
    </Dialog>
  );
}
