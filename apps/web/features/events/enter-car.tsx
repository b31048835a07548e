'use client';

import { type CarRow, enterCarInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from './contract-resolver';
import { EntryFields, type EntryForm, formToEntry } from './entry-form';
import { RestoredNotice } from './restored-notice';
import { setFieldProblems } from './set-field-problems';
import { SaveTrouble } from './trouble';

const newEntry = enterCarInput.omit({ teamId: true, eventId: true });

export interface EnterCarProps {
  teamId: string;
  eventId: string;
  /** Those not entered yet; at least one. */
  cars: readonly CarRow[];
  open: boolean;
  onClose: () => void;
}

export function EnterCar({ teamId, eventId, cars, open, onClose }: EnterCarProps) {
  const blank: EntryForm = {
    carId: cars.length === 1 ? (cars[0]?.carId ?? '') : '',
    carNumber: '',
    startPosition: '',
    people: '2',
    laterPositions: {},
  };
  const form = useForm<EntryForm>({
    defaultValues: blank,
    resolver: contractResolver<EntryForm>(newEntry, formToEntry, ({ path, message }) => ({
      path,
      message: path === 'carId' ? 'Choose the car.' : message,
    })),
  });
  const kept = useKeptForm(`entry.new.${eventId}`, form);
  const queries = useQueryClient();
  const enter = useMutation(api.event.enter.mutationOptions());
  const { errors } = form.formState;

  const save = form.handleSubmit(async (values) => {
    try {
      await enter.mutateAsync({ teamId, eventId, ...newEntry.parse(formToEntry(values)) });
      kept.clear();
      onClose();
      await Promise.all([
        queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) }),
        queries.invalidateQueries({ queryKey: api.event.list.queryKey({ teamId }) }),
      ]);
    } catch (error) {
      setFieldProblems(form, problemOf(error));
    }
  });

  return (
    <Dialog
      open={open}
      onClose={onClose}
      title="Enter a car"
      actions={
        <Button look="main" onClick={save} busy={enter.isPending} busyWords="Entering …">
          Enter the car
        </Button>
      }
    >
      <form noValidate onSubmit={save}>
        <Stack>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(blank);
              kept.clear();
            }}
          />
          <SelectField
            label="Car"
            unchosen="Choose the car"
            options={cars.map((car) => ({ value: car.carId, label: car.name }))}
            error={errors.carId?.message}
            {...form.register('carId')}
          />
          <EntryFields form={form} />
          <SaveTrouble problem={enter.error ? problemOf(enter.error) : null} />
          {/* Lets Enter on the keyboard send it: the visible button stands outside the form. */}
          <button type="submit" hidden />
        </Stack>
      </form>
    </Dialog>
  );
}
