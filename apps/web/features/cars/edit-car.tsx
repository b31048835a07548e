'use client';

import { type CarRow, updateCarInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { CarFields, type CarForm } from './car-fields';

const carFields = updateCarInput.omit({ teamId: true, carId: true });

export interface EditCarProps {
  teamId: string;
  car: CarRow;
  open: boolean;
  onClose: () => void;
}

export function EditCar({ teamId, car, open, onClose }: EditCarProps) {
  const saved: CarForm = { name: car.name, drive: car.drive, surface: car.surface };
  const form = useForm<CarForm>({
    values: saved,
    resetOptions: { keepDirtyValues: true },
    resolver: contractResolver<CarForm>(carFields, (values) => values),
  });
  const kept = useKeptForm(`car.${car.carId}`, form);
  const queries = useQueryClient();
  const update = useMutation(api.car.update.mutationOptions());

  const save = form.handleSubmit(async (values) => {
    try {
      await update.mutateAsync({ teamId, carId: car.carId, ...carFields.parse(values) });
      form.reset(values);
      kept.clear();
      await queries.invalidateQueries({ queryKey: api.car.list.queryKey({ teamId }) });
      onClose();
    } catch (error) {
      setFieldProblems(form, problemOf(error));
    }
  });

  return (
    <Dialog
      open={open}
      onClose={onClose}
      title="Change the car"
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
          <CarFields
            inputs={{
              name: form.register('name'),
              drive: form.register('drive'),
              surface: form.register('surface'),
            }}
            errors={form.formState.errors}
          />
          <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
          {/* Lets Enter on the keyboard send it: the visible button stands outside the form. */}
          <button type="submit" hidden />
        </Stack>
      </form>
    </Dialog>
  );
}
