'use client';

import { type EntryReplica, updateEntryInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from './contract-resolver';
import { EntryFields, type EntryForm, formToEntry } from './entry-form';
import { PositionFields } from './position-fields';
import { placePositionProblem, toPositionForm } from './position-form';
import { RestoredNotice } from './restored-notice';
import { setFieldProblems } from './set-field-problems';
import { SaveTrouble } from './trouble';

const entryFields = updateEntryInput.omit({ teamId: true, entryId: true });

export interface EditEntryProps {
  teamId: string;
  eventId: string;
  entry: EntryReplica;
  /** Those in which the order may be set anew. */
  sections: readonly number[];
  open: boolean;
  onClose: () => void;
}

export function EditEntry({ teamId, eventId, entry, sections, open, onClose }: EditEntryProps) {
  const saved: EntryForm = {
    carId: entry.car.carId,
    carNumber: entry.carNumber,
    startPosition: String(entry.startPosition),
    people: String(entry.people),
    laterPositions: toPositionForm(sections, entry.positionsBySection),
  };
  const form = useForm<EntryForm>({
    defaultValues: saved,
    resolver: contractResolver<EntryForm>(entryFields, formToEntry, placePositionProblem),
  });
  const kept = useKeptForm(`entry.${entry.entryId}`, form, ['carId']);
  const queries = useQueryClient();
  const update = useMutation(api.event.updateEntry.mutationOptions());

  const save = form.handleSubmit(async (values) => {
    try {
      const { entryId } = entry;
      await update.mutateAsync({ teamId, entryId, ...entryFields.parse(formToEntry(values)) });
      form.reset(values);
      kept.clear();
      onClose();
      await Promise.all([
        queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) }),
        queries.invalidateQueries({ queryKey: api.event.list.queryKey({ teamId }) }),
      ]);
    } catch (error) {
      setFieldProblems(form, problemOf(error), placePositionProblem);
    }
  });

  return (
    <Dialog
      open={open}
      onClose={onClose}
      title={`Car ${entry.carNumber} at this event`}
      actions={
        <Button look="main" onClick={save} busy={update.isPending} busyWords="Saving …">
          Save
        </Button>
      }
    >
      <form noValidate onSubmit={save}>
        <Stack>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(saved);
              kept.clear();
            }}
          />
          <EntryFields form={form} />
          <PositionFields form={form} sections={sections} />
          <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
          {/* Lets Enter on the keyboard send it: the visible button stands outside the form. */}
          <button type="submit" hidden />
        </Stack>
      </form>
    </Dialog>
  );
}
