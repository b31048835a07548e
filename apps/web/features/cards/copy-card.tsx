'use client';

import type { CarRow } from '@halfshaft/contract';
import type { JobCard } from '@halfshaft/lifing';
import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { useRouter } from 'next/navigation';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { SelectField } from '@/components/select-field';
import { Stack } from '@/components/stack';
import { api, problemOf } from '@/lib/api';
import { cardAddress } from '../events/addresses';
import { SaveTrouble } from '../events/trouble';
import { copyName } from './copy-name';

export interface CopyCardProps {
  teamId: string;
  car: CarRow;
  card: JobCard;
}

/** A second card like this one, on this car or another of the team. It opens to be changed. */
export function CopyCard({ teamId, car, card }: CopyCardProps) {
  const [asking, setAsking] = useState(false);
  const [toCarId, setToCarId] = useState(car.carId);
  const cars = useQuery(api.car.list.queryOptions({ teamId }));
  const router = useRouter();
  const queries = useQueryClient();
  const save = useMutation(api.card.save.mutationOptions());

  const copy = useMutation({
    mutationFn: async () => {
      const there = api.card.list.queryOptions({ teamId, carId: toCarId });
      const cards = await queries.fetchQuery(there);
      const { id: _id, ...body } = card;
      const name = copyName(
        card.name,
        cards.map((each) => each.name),
      );
      return save.mutateAsync({ teamId, carId: toCarId, cardId: null, card: { ...body, name } });
    },
    onSuccess: async ({ cardId }) => {
      await Promise.all([
        queries.invalidateQueries({ queryKey: api.card.list.queryKey({ teamId, carId: toCarId }) }),
        queries.invalidateQueries(api.event.get.pathFilter()),
      ]);
      setAsking(false);
      router.push(cardAddress(teamId, toCarId, cardId));
    },
  });

  return (
    <>
      <Button look="quiet" onClick={() => setAsking(true)}>
        Copy the card
      </Button>
      <Dialog
        open={asking}
        onClose={() => setAsking(false)}
        title={`Copy “${card.name}”`}
        actions={
          <Button look="main" busy={copy.isPending} busyWords="Copying …" onClick={() => copy.mutate()}>
            Copy
          </Button>
        }
      >
        <Stack>
          <p>The card is copied as it was last saved. The copy opens, so that you can change it.</p>
          <SelectField
            label="To which car"
            options={(cars.data ?? [car]).map(({ carId, name }) => ({
              value: carId,
              label: carId === car.carId ? `${name} (this car)` : name,
            }))}
            value={toCarId}
            onChange={(event) => setToCarId(event.target.value)}
          />
          <SaveTrouble problem={copy.error ? problemOf(copy.error) : null} />
        </Stack>
      </Dialog>
    </>
  );
}
