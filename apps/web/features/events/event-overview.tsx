'use client';

import type { EventReplica } from '@halfshaft/contract';
import { formatClock, formatDay, servicesOf } from '@halfshaft/itinerary';
import { useQuery } from '@tanstack/react-query';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { LoadingState } from '@/components/loading-state';
import { PageHeader } from '@/components/page-header';
import { Stack } from '@/components/stack';
import { api } from '@/lib/api';
import { BulletinNotice } from '../bulletins/bulletin-notice';
import { CarrySheet } from '../carry/carry-sheet';
import { PlannedSheet } from '../conditions/planned-sheet';
import { ThingsToCheck } from '../itinerary/things-to-check';
import { PenaltySheet } from '../penalties/penalty-sheet';
import { ShareSheet } from '../share/share-sheet';
import { ListedPlaces } from '../start-list/listed-places';
import { AllowanceSheet } from '../tyres/allowance-sheet';
import { useEventWork } from '../work/use-event-work';
import { WorkNotices } from '../work/work-notices';
import { boardAddress, carsAddress, endAddress, itineraryAddress } from './addresses';
import { ClockSheet } from './clock-sheet';
import { EnterCar } from './enter-car';
import { EntrySheet } from './entry-sheet';
import { EventPage } from './event-page';
import { EventRoute } from './event-route';
import { startInWords } from './later-sections';
import { LoadTrouble } from './trouble';
import { useEventClock } from './use-event-clock';
import { useTeam } from './use-team';

export function EventOverviewPage() {
  return <EventPage>{(ids) => <EventOverview {...ids} />}</EventPage>;
}

interface EventOverviewProps {
  teamId: string;
  eventId: string;
}

function EventOverview({ teamId, eventId }: EventOverviewProps) {
  const event = useQuery(api.event.get.queryOptions({ teamId, eventId }));
  if (event.isPending) return <LoadingState wholePage words="Fetching the event …" />;
  if (event.data === undefined) {
    return <LoadTrouble wholePage error={event.error} onTryAgain={() => event.refetch()} />;
  }
  return <OpenedEvent teamId={teamId} event={event.data} receivedAt={event.dataUpdatedAt} />;
}

interface OpenedEventProps {
  teamId: string;
  event: EventReplica;
  /** This device's clock when the event came. */
  receivedAt: number;
}

function OpenedEvent({ teamId, event, receivedAt }: OpenedEventProps) {
  const team = useTeam(teamId);
  const now = useEventClock(event, receivedAt);
  // By plan until the log has come; then by what was written, as it is written.
  const work = { ...useEventWork(teamId, event.eventId), replica: event };
  const { state } = work;
  const services = useMemo(() => servicesOf(event.itinerary), [event.itinerary]);
  const mayManage = team?.mayManage ?? false;
  const { itinerary, entries } = event;
  const [first] = itinerary.points;
  return (
    <>
      <PageHeader
        title={event.name}
        above={team?.name}
        facts={[
          ...(first ? [formatDay(first.firstCarAt, itinerary.timeZone)] : []),
          `Official time ${now === null ? '––:––' : formatClock(now, itinerary.timeZone)}`,
          `Itinerary version ${event.itineraryNumber}`,
        ]}
      />
      <WorkNotices work={work} />
      <BulletinNotice teamId={teamId} eventId={event.eventId} />
      <ListedPlaces
        teamId={teamId}
        eventId={event.eventId}
        mayManage={mayManage}
        startOf={(entryId) => {
          const entry = entries.find((one) => one.entryId === entryId);
          return entry && startInWords(itinerary, entry).replace(/^S/, 's');
        }}
      />
      <ThingsToCheck text={event.itineraryText} href={itineraryAddress(teamId, event.eventId)} />
      <EventRoute {...{ event, services, state, now }} />
      {entries.length === 0 ? (
        <EmptyState title="No car entered yet">
          Once a car is entered, its services stand here with their times.
        </EmptyState>
      ) : null}
      {entries.map((entry) => (
        <EntrySheet key={entry.entryId} {...{ teamId, work, entry, now, mayManage }} />
      ))}
      {entries.length === 0 ? null : (
        <Stack gap="small" across>
          <LinkButton href={boardAddress(teamId, event.eventId)}>Board for a big screen</LinkButton>
          <LinkButton href={endAddress(teamId, event.eventId)}>After the event: what is left</LinkButton>
        </Stack>
      )}
      <PlannedSheet {...{ teamId, event, mayManage }} />
      <PenaltySheet {...{ teamId, event, mayManage }} />
      <ClockSheet {...{ teamId, event, receivedAt, mayManage }} />
      <AllowanceSheet {...{ teamId, event, mayManage }} />
      <ShareSheet {...{ teamId, mayManage }} eventId={event.eventId} />
      <CarrySheet {...{ teamId, eventId: event.eventId, mayManage }} />
      {mayManage ? <EnterAnother teamId={teamId} event={event} /> : null}
    </>
  );
}

/** The button that enters a car, as long as the team has one that is not entered. */
function EnterAnother({ teamId, event }: { teamId: string; event: EventReplica }) {
  const cars = useQuery(api.car.list.queryOptions({ teamId }));
  const [entering, setEntering] = useState(false);
  const entered = new Set(event.entries.map((entry) => entry.car.carId));
  const free = cars.data?.filter((car) => !entered.has(car.carId)) ?? [];
  if (cars.data === undefined) return null;
  if (cars.data.length === 0) {
    return <LinkButton href={carsAddress(teamId)}>Add a car to the team first</LinkButton>;
  }
  if (free.length === 0) return <p>Every car of the team is entered.</p>;
  return (
    <div>
      <Button look={event.entries.length === 0 ? 'main' : 'plain'} onClick={() => setEntering(true)}>
        Enter a car
      </Button>
      <EnterCar
        // A form of its own for each set of cars that is left.
        key={free.map((car) => car.carId).join()}
        teamId={teamId}
        eventId={event.eventId}
        cars={free}
        open={entering}
        onClose={() => setEntering(false)}
      />
    </div>
  );
}
