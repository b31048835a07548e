'use client';

import { formatClock } from '@halfshaft/itinerary';
import { TimeOfDay } from '@/components/clock';
import { EmptyState } from '@/components/empty-state';
import { LinkButton } from '@/components/link-button';
import { useScreenAwake } from '@/lib/use-screen-awake';
import { eventAddress } from '../events/addresses';
import { type LoadedWork, WorkPage } from '../work/work-page';
import { WorkTrouble } from '../work/work-trouble';
import styles from './board.module.css';
import { CarBoard } from './car-board';

export function BoardPage() {
  useScreenAwake();
  return <WorkPage wide>{(work) => <BoardScreen work={work} />}</WorkPage>;
}

/** For a screen on the awning's wall: every car of the team at its service, to be read and not touched. */
function BoardScreen({ work }: { work: LoadedWork }) {
  const { replica, now, teamId, eventId } = work;
  return (
    <div className={styles.board}>
      <WorkTrouble work={work} />
      <header className={styles.head}>
        <h1 className={styles.title}>{replica.name}</h1>
        <div className={styles.clock}>
          <TimeOfDay
            large
            label="official time"
            time={now === null ? null : formatClock(now, replica.itinerary.timeZone)}
          />
        </div>
      </header>
      {replica.entries.length === 0 ? (
        <EmptyState
          title="No car entered yet"
          action={<LinkButton href={eventAddress(teamId, eventId)}>To the event</LinkButton>}
        >
          <p>Once a car is entered, its services stand here.</p>
        </EmptyState>
      ) : null}
      <div className={styles.cars}>
        {now === null
          ? null
          : replica.entries.map((entry) => (
              <CarBoard key={entry.entryId} work={work} entry={entry} now={now} />
            ))}
      </div>
      <p className={styles.note}>
        “Begin by”: wheels on (for wheel nuts and walk-round: out) less the minutes of that job alone. It does
        not know who has several jobs.
      </p>
    </div>
  );
}
