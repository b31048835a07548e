'use client';

import { useMutation, useQuery, useQueryClient } from '@tanstack/react-query';
import { Button } from '@/components/button';
import { Notice } from '@/components/notice';
import { api, problemOf } from '@/lib/api';
import { SaveTrouble } from '../events/trouble';
import { type ListedCar, placesInWords } from './places-in-words';

const FRESH_MILLIS = 60_000;

export interface ListedPlacesProps {
  teamId: string;
  eventId: string;
  /** What the team has set for the car: "start position 14". */
  startOf: (entryId: string) => string | undefined;
  mayManage: boolean;
}

/** Which cars start elsewhere by the organiser's start list than the team has set; nothing while none does. */
export function ListedPlaces({ teamId, eventId, startOf, mayManage }: ListedPlacesProps) {
  const options = api.startList.open.queryOptions({ teamId, eventId });
  const { data: cars } = useQuery({ ...options, staleTime: FRESH_MILLIS });
  return cars?.map((car) => (
    <Notice key={car.entryId} title="The organiser’s start list">
      <p>
        {placesInWords(car)} Set so far: {startOf(car.entryId) ?? 'another place'}.
      </p>
      {mayManage ? (
        <TakePlaces teamId={teamId} eventId={eventId} car={car} />
      ) : (
        <p>A manager takes it over for the team.</p>
      )}
    </Notice>
  ));
}

function TakePlaces({ teamId, eventId, car }: { teamId: string; eventId: string; car: ListedCar }) {
  const queries = useQueryClient();
  const take = useMutation(
    api.startList.take.mutationOptions({
      onSettled: () =>
        Promise.all([
          queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) }),
          queries.invalidateQueries({ queryKey: api.startList.open.queryKey({ teamId, eventId }) }),
        ]),
    }),
  );
  const { entryId, carNumber } = car;
  return (
    <>
      <div>
        <Button
          busy={take.isPending}
          busyWords="Taking over …"
          onClick={() => take.mutate({ teamId, entryId })}
        >
          Take it over for car {carNumber}
        </Button>
      </div>
      <SaveTrouble problem={take.error ? problemOf(take.error) : null} />
    </>
  );
}
