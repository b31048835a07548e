'use client';

import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import type { EpochSeconds } from '@halfshaft/itinerary';
import type { WorkState } from '@halfshaft/worklog';
import { useMemo, useState } from 'react';
import { Button } from '@/components/button';
import { LinkButton } from '@/components/link-button';
import { Mark } from '@/components/mark';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import { Table, type TableColumn } from '@/components/table';
import { LoseList } from '../control/lose-list';
import { serviceInWords } from '../itinerary/read-points';
import { HomeWork } from '../service/home-work';
import type { OpenedWork } from '../work/use-event-work';
import { actualInWords } from './actual-in-words';
import { bayAddress, carAddress, roadAddress, serviceAddress } from './addresses';
import { EditEntry } from './edit-entry';
import styles from './entry-sheet.module.css';
import { laterSections, startInWords } from './later-sections';
import { momentInWords, type ServiceMoment, serviceMoments } from './service-moments';

export interface EntrySheetProps {
  teamId: string;
  /** With what was written down so far. */
  work: OpenedWork;
  entry: EntryReplica;
  /** The event's official clock; null while not known. */
  now: EpochSeconds | null;
  mayManage: boolean;
}

/** One car at the event: its services with their times, and the ways into each of them. */
export function EntrySheet({ teamId, work, entry, now, mayManage }: EntrySheetProps) {
  const [editing, setEditing] = useState(false);
  const { replica: event, state } = work;
  const { eventId, itinerary } = event;
  const sections = laterSections(itinerary);
  const people = entry.people === 1 ? '1 person' : `${entry.people} people`;
  return (
    <Sheet
      title={`Car ${entry.carNumber} · ${entry.car.name}`}
      aside={
        <Stack across gap="small">
          <LinkButton
            look="quiet"
            href={carAddress(teamId, entry.car.carId)}
            aria-label={`Cards of car ${entry.carNumber}`}
          >
            Cards
          </LinkButton>
          {mayManage ? (
            <Button
              look="quiet"
              aria-label={`Change car ${entry.carNumber} at this event`}
              onClick={() => setEditing(true)}
            >
              Change
            </Button>
          ) : null}
        </Stack>
      }
    >
      <p>
        {startInWords(itinerary, entry)}, {people} at service
      </p>
      <HomeWork work={work} entry={entry} />
      <ServiceTable {...{ teamId, event, entry, state, now }} />
      <LoseList {...{ event, state, entry }} />
      {mayManage ? (
        <EditEntry
          key={JSON.stringify([entry.carNumber, entry.startPosition, entry.positionsBySection, entry.people])}
          {...{ teamId, eventId, entry, sections }}
          open={editing}
          onClose={() => setEditing(false)}
        />
      ) : null}
    </Sheet>
  );
}

/** The mark says the same as the words. Not a tick for what is past: that a service is over does not mean it was done. */
const MARKS = { past: 'hatched', now: 'filled', next: 'half' } as const;

function ServiceName({ moment, when }: { moment: ServiceMoment; when: ReturnType<typeof momentInWords> }) {
  return (
    <span className={styles.service}>
      <Mark shape="box" fill={when === null ? 'outlined' : MARKS[when.kind]} />
      <span>
        {serviceInWords(moment.service)}
        {when === null ? null : <span className={styles.when}>{when.words}</span>}
      </span>
    </span>
  );
}

/** The times that count, and under them what the timetable said and what the controls wrote. */
function Times({ moment, words }: { moment: ServiceMoment; words: readonly string[] }) {
  return (
    <>
      {`${moment.inClock} – ${moment.outClock}`}
      {words.map((part) => (
        <span key={part} className={styles.actual}>
          {/* A span of time is one thing to read: it is not broken at its dash. */}
          {part.replaceAll(' – ', '\u00a0–\u00a0')}
        </span>
      ))}
    </>
  );
}

interface ServiceTableProps extends Pick<EntrySheetProps, 'teamId' | 'entry' | 'now'> {
  event: EventReplica;
  state: WorkState;
}

function ServiceTable({ teamId, event, entry, state, now }: ServiceTableProps) {
  const moments = useMemo(() => serviceMoments(event, state, entry), [event, state, entry]);
  if (moments.length === 0) return <p>The itinerary has no service.</p>;
  const visitOf = ({ service }: ServiceMoment) => ({
    team: teamId,
    event: event.eventId,
    car: entry.entryId,
    at: service.id,
  });
  const columns: TableColumn<ServiceMoment>[] = [
    {
      key: 'service',
      heading: 'Service',
      leads: true,
      cell: (moment) => (
        <ServiceName moment={moment} when={momentInWords(moments, moments.indexOf(moment), now)} />
      ),
    },
    { key: 'leg', heading: 'Leg', figures: true, cell: ({ service }) => service.leg },
    {
      key: 'times',
      heading: 'In – out',
      figures: true,
      cell: (moment) => <Times moment={moment} words={actualInWords(event, state, moment)} />,
    },
    {
      key: 'ways',
      heading: 'Go to',
      cell: (moment) => (
        <Stack across gap="small">
          <LinkButton
            href={serviceAddress(visitOf(moment))}
            aria-label={`Sheet of Service ${moment.service.id}, car ${entry.carNumber}`}
          >
            Sheet
          </LinkButton>
          <LinkButton
            href={bayAddress(visitOf(moment))}
            aria-label={`Bay at Service ${moment.service.id}, car ${entry.carNumber}`}
          >
            Bay
          </LinkButton>
          <LinkButton
            href={roadAddress(visitOf(moment))}
            aria-label={`Road to Service ${moment.service.id}, car ${entry.carNumber}`}
          >
            Road
          </LinkButton>
        </Stack>
      ),
    },
  ];
  return (
    <Table
      caption={`Services of car ${entry.carNumber}`}
      captionHidden
      columns={columns}
      rows={moments}
      rowKey={({ service }) => service.id}
    />
  );
}
