'use client';

import { type EpochSeconds, formatClock } from '@halfshaft/itinerary';
import type { PersonId } from '@halfshaft/worklog';
import { useRef, useState } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import type { Visit } from '../service/visit';
import type { LoadedWork } from '../work/work-page';
import styles from './control.module.css';
import { latenessQuestionOf } from './lateness-of';
import { RecordTime } from './record-time';
import { roadTimeInWords } from './road-time-in-words';
import { nextRoadTime, type RoadPart, type RoadTime, roadTimes } from './road-times';

/** Earlier than this nobody waits at a control yet. */
const LONG_BEFORE_SECONDS = 3600;

interface RoadSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
  part: RoadPart;
  title: string;
  /** The next time stands in the open up to this moment; from then on another one is asked for first. */
  openUntil: EpochSeconds;
}

/** The times on a part of the road: the one that is on in the open, to be written in two taps; all of them below. */
export function RoadSheet({ work, visit, by, part, title, openUntil }: RoadSheetProps) {
  const { replica, state, now } = work;
  const place = useRef<HTMLDivElement>(null);
  const [chosen, setChosen] = useState<string | null>(null);
  const times = roadTimes(replica, state, visit.entry, part);
  const isOn = now !== null && now < openUntil && now > (times[0]?.dueAt ?? now) - LONG_BEFORE_SECONDS;
  const next = isOn ? nextRoadTime(times, now) : null;
  const current = times.find((time) => time.title === chosen) ?? next;
  const written = times.filter(({ recorded }) => recorded !== null).length;
  if (times.length === 0) return null;

  function show(name: string | null) {
    setChosen(name);
    // What was tapped is gone or stays behind: the keyboard goes on from what is shown now.
    place.current?.focus();
  }

  return (
    <Sheet title={title}>
      <Stack>
        <div ref={place} tabIndex={-1} className={styles.place}>
          {current ? (
            <CurrentTime key={current.title} {...{ work, by, current }} onDone={() => show(null)} />
          ) : null}
          {written === times.length ? <p>Every time on the way is written down.</p> : null}
        </div>
        <Disclosure summary={`All times on the way (${written} of ${times.length} written down)`}>
          <RoadList work={work} visit={visit} times={times} onChoose={show} />
        </Disclosure>
      </Stack>
    </Sheet>
  );
}

interface CurrentTimeProps {
  work: LoadedWork;
  by: PersonId;
  current: RoadTime;
  onDone: () => void;
}

function CurrentTime({ work, by, current, onDone }: CurrentTimeProps) {
  const { controlId, finish, entryId, kind, dueAt, recorded } = current;
  const clock = formatClock(dueAt, work.replica.itinerary.timeZone);
  return (
    <Stack>
      <h3>
        {current.title}
        {current.place === controlId ? '' : `, ${current.place}`}
      </h3>
      <p className={styles.statement}>{kind === 'finish' ? `About ${clock}.` : `Due ${clock}.`}</p>
      <RecordTime
        {...{ work, by, entryId, controlId, dueAt, onDone }}
        {...(finish ? { finish } : {})}
        dueWords={kind === 'finish' ? null : 'As due'}
        mayBeHeld={kind === 'control'}
        saidMinutes={recorded?.heldMinutes ?? 0}
      />
    </Stack>
  );
}

interface RoadListProps {
  work: LoadedWork;
  visit: Visit;
  times: readonly RoadTime[];
  onChoose: (title: string) => void;
}

function RoadList({ work: { replica, state }, visit, times, onChoose }: RoadListProps) {
  const question = latenessQuestionOf(replica, state, visit.entry);
  return (
    <ul className={styles.road}>
      {times.map((time) => (
        <li key={time.title} className={styles.roadTime}>
          <span>
            <strong>{time.title}</strong> {roadTimeInWords(time, question)}
          </span>
          <Button
            look="quiet"
            aria-label={`${time.recorded ? 'Correct' : 'Write down'} ${time.title}`}
            onClick={() => onChoose(time.title)}
          >
            {time.recorded ? 'Correct' : 'Write down'}
          </Button>
        </li>
      ))}
    </ul>
  );
}
