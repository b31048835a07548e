'use client';

import type { EventReplica } from '@halfshaft/contract';
import { type EpochSeconds, positionsOf, type ServiceWindow } from '@halfshaft/itinerary';
import { useState } from 'react';
import { ChoiceGroup } from '@/components/choice-group';
import { Sheet } from '@/components/sheet';
import { RouteStrip } from '../route/route-strip';
import { plannedMetres } from './planned-metres';

export interface EventRouteProps {
  event: EventReplica;
  services: readonly ServiceWindow[];
  /** The event's official clock; null while not known. */
  now: EpochSeconds | null;
}

/** The event as one line, with the clocks of one car and where it is now by plan. */
export function EventRoute({ event, services, now }: EventRouteProps) {
  const { itinerary, entries } = event;
  const [chosen, setChosen] = useState<string | null>(null);
  const entry = entries.find((one) => one.entryId === chosen) ?? entries[0];
  const startPosition = entry ? positionsOf(entry) : 1;
  const here = entry === undefined || now === null ? null : plannedMetres(itinerary, startPosition, now);
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
      <RouteStrip itinerary={itinerary} services={services} startPosition={startPosition} hereMetres={here} />
      {here === null ? null : <p>The flag stands where the car is now by plan.</p>}
      {entry === undefined ? <p>Times are those of start position 1.</p> : null}
    </Sheet>
  );
}
