'use client';

import { createCarInput, type StarterSet } from '@halfshaft/contract';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useForm } from 'react-hook-form';
import { Button } from '@/components/button';
import { type Choice, ChoiceGroup } from '@/components/choice-group';
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
  starterCards: StarterSet;
}

const NEW_CAR: NewCarForm = { name: '', drive: '', surface: '', starterCards: 'small' };
const STARTER_CHOICES: readonly (Choice & { value: StarterSet })[] = [
  {
    value: 'small',
    label: 'A small set',
    hint: 'Five rounds and a few jobs, about thirteen cards. For a first event: what is due at every service fits two people in twenty minutes.',
  },
  {
    value: 'full',
    label: 'The full set',
    hint: 'Ten rounds and more than fifty jobs by distance, engine hours, day and event. For a car you look after all season. Most of them fall due seldom.',
  },
  {
    value: 'none',
    label: 'None',
    hint: 'An empty car. For when you write your own cards, or paste those of another car.',
  },
];
const newCar = createCarInput.omit({ teamId: true });

export function AddCar({ teamId }: { teamId: string }) {
  const form = useForm<NewCarForm>({
    defaultValues: NEW_CAR,
    resolver: contractResolver<NewCarForm>(newCar, (values) => values),
  });
  const kept = useKeptForm(`car.new.${teamId}`, form);
  const router = useRouter();
  const queries = useQueryClient();
  const create = useMutation(api.car.create.mutationOptions());
  const { errors } = form.formState;

  const save = form.handleSubmit(async (values) => {
    try {
      const { carId } = await create.mutateAsync({ teamId, ...newCar.parse(values) });
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
            label="Cards to begin with"
            hint="Either way, change the numbers to your car’s: its builder’s values come first."
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
