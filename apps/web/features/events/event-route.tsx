'use client';

import type { EventReplica } from '@halfshaft/contract';
import { type EpochSeconds, metresAlong, positionsOf, type ServiceWindow } from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { useMemo, useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { Sheet } from '@/components/sheet';
import { timesOfEntry } from '../control/lateness-of';
import { RouteStrip } from '../route/route-strip';

const BY_PLAN = 'The flag stands where the car is now by plan.';
const BY_TIMES = 'The flag stands where the car should be now, by the times written down so far.';

export interface EventRouteProps {
  event: EventReplica;
  services: readonly ServiceWindow[];
  /** What was written down so far. */
  state: WorkState;
  /** The event's official clock; null while not known. */
  now: EpochSeconds | null;
}

/** The event as one line, with the clocks of one car and where it is now. */
export function EventRoute({ event, services, state, now }: EventRouteProps) {
  const { itinerary, entries } = event;
  const [chosen, setChosen] = useState<string | null>(null);
  const entry = entries.find((one) => one.entryId === chosen) ?? entries[0];
  const startPosition = entry ? positionsOf(entry) : 1;
  const times = useMemo(() => (entry ? timesOfEntry(event, state, entry) : []), [event, state, entry]);
  const here = now === null ? null : metresAlong(itinerary, times, now);
  const isByPlan = times.every(({ writtenAt }) => writtenAt === null);
  return (
    <Sheet title="The way">
      {entries.length > 1 ? (
        <ChoiceGroup
          label="Times of"
          across
          choices={entries.map((one) => ({ value: one.entryId, label: `Car ${one.carNumber}` }))}
          chosen={entry ? [entry.entryId] : []}
          onChange={(change) => setChosen(change.target.value)}
        />
      ) : null}
      <RouteStrip {...{ itinerary, services, startPosition, times }} hereMetres={here} />
      {here === null ? null : <p>{isByPlan ? BY_PLAN : BY_TIMES}</p>}
      {entry === undefined ? <p>Times are those of start position 1.</p> : null}
    </Sheet>
  );
}
