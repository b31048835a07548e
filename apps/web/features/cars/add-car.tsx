'use client';

import { createCarInput } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { ChoiceGroup } from '@/components/choice-group';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { useKeptForm } from '@/lib/keep-typed';
import { carAddress } from '../events/addresses';
import { contractResolver } from '../events/contract-resolver';
import { RestoredNotice } from '../events/restored-notice';
import { setFieldProblems } from '../events/set-field-problems';
import { SaveTrouble } from '../events/trouble';
import { CarFields, type CarForm } from './car-fields';

interface NewCarForm extends CarForm {
  starterCards: 'yes' | 'no';
}

const NEW_CAR: NewCarForm = { name: '', drive: '', surface: '', starterCards: 'yes' };
const STARTER_CHOICES = [
  { value: 'yes', label: 'Yes', hint: 'Rounds and jobs most cars need. Change the numbers to your car’s.' },
  { value: 'no', label: 'No', hint: 'An empty car, for your own cards.' },
];
const newCar = createCarInput.omit({ teamId: true });

function toBody({ starterCards, ...car }: NewCarForm) {
  return { ...car, withStarterCards: starterCards === 'yes' };
}

export function AddCar({ teamId }: { teamId: string }) {
  const form = useForm<NewCarForm>({
    defaultValues: NEW_CAR,
    resolver: contractResolver(newCar, toBody),
  });
  const kept = useKeptForm(`car.new.${teamId}`, form);
  const router = useRouter();
  const queries = useQueryClient();
  const create = useMutation(api.car.create.mutationOptions());
  const { errors } = form.formState;

  const save = form.handleSubmit(async (values) => {
    try {
      const { carId } = await create.mutateAsync({ teamId, ...newCar.parse(toBody(values)) });
      kept.clear();
      await queries.invalidateQueries({ queryKey: api.car.list.queryKey({ teamId }) });
      router.push(carAddress(teamId, carId));
    } catch (error) {
      setFieldProblems(form, problemOf(error));
    }
  });

  return (
    <Sheet title="Add a car">
      <form noValidate onSubmit={save}>
        <Stack>
          <RestoredNotice
            restored={kept.restored}
            onStartAfresh={() => {
              form.reset(NEW_CAR);
              kept.clear();
            }}
          />
          <CarFields
            inputs={{
              name: form.register('name'),
              drive: form.register('drive'),
              surface: form.register('surface'),
            }}
            errors={errors}
          />
          <ChoiceGroup
            label="Begin with starter cards?"
            choices={STARTER_CHOICES}
            {...form.register('starterCards')}
          />
          <SaveTrouble problem={create.error ? problemOf(create.error) : null} />
          <Stack across>
            <Button type="submit" look="main" busy={create.isPending} busyWords="Adding …">
              Add the car
            </Button>
          </Stack>
        </Stack>
      </form>
    </Sheet>
  );
}
