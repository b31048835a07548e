'use client';

import { type EpochSeconds, formatClock, minutesToLose, toWholeMinute } from '@halfshaft/itinerary';
import type { ControlTime, PersonId } from '@halfshaft/worklog';
import { type ReactNode, useState } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { Sheet } from '@/components/sheet';
import { Stack } from '@/components/stack';
import type { Visit } from '../service/visit';
import { nameOf } from '../work/names';
import type { LoadedWork } from '../work/work-page';
import styles from './control.module.css';
import { earlyInWords, latenessInWords, toLoseInWords, windowInWords } from './lateness-in-words';
import { latenessAt, latenessQuestionOf } from './lateness-of';
import { RecordTime } from './record-time';
import { visitTimes } from './visit-times';

const LONG_BEFORE_SECONDS = 300;

interface ControlSheetProps {
  work: LoadedWork;
  visit: Visit;
  by: PersonId;
}

/** First of all at a service: what the in-control wrote, what it means, and later what the out-control wrote. */
export function ControlSheet({ work, visit, by }: ControlSheetProps) {
  const { replica, state } = work;
  const { service, entry } = visit;
  const times = visitTimes(replica, state, visit);
  const question = latenessQuestionOf(replica, state, entry);
  const toLose = question.records.length === 0 ? '' : toLoseInWords(minutesToLose(question)[0]);
  const parts = { work, visit, by };
  return (
    <Sheet title={times.recordedIn === null ? `In-time at ${service.inControl}` : 'Times at the controls'}>
      <Stack>
        <ControlPart
          {...parts}
          word="In"
          controlId={service.inControl}
          pointIndex={service.inIndex}
          plannedAt={toWholeMinute(visit.inAt)}
          dueAt={times.dueIn}
          recorded={times.recordedIn}
        />
        {times.recordedIn === null ? null : (
          <ControlPart
            {...parts}
            word="Out"
            controlId={service.outControl}
            pointIndex={service.outIndex}
            plannedAt={toWholeMinute(visit.outAt)}
            dueAt={times.dueOut}
            recorded={times.recordedOut}
          />
        )}
        {toLose === '' ? null : <p className={styles.statement}>{toLose}</p>}
        <p className={styles.quiet}>The event’s regulations decide, and its officials.</p>
      </Stack>
    </Sheet>
  );
}

interface ControlPartProps extends ControlSheetProps {
  word: 'In' | 'Out';
  controlId: string;
  pointIndex: number;
  plannedAt: EpochSeconds;
  dueAt: EpochSeconds;
  recorded: ControlTime | null;
}

function ControlPart(props: ControlPartProps) {
  const { work, visit, by, word, controlId, dueAt, plannedAt, recorded } = props;
  const [correcting, setCorrecting] = useState(false);
  const mayFold = word === 'Out' && recorded === null;
  const { rules, timeZone } = { rules: work.replica.penaltyRules, timeZone: work.replica.itinerary.timeZone };
  const point = work.replica.itinerary.points[props.pointIndex];
  return (
    <>
      {word === 'Out' && recorded === null ? <h3>Out-time at {controlId}</h3> : null}
      <div aria-live="polite">
        {recorded ? (
          <Recorded {...props} recorded={recorded} />
        ) : (
          <Due {...{ dueAt, plannedAt, timeZone, word }} />
        )}
      </div>
      {recorded === null ? (
        <p>
          {windowInWords(dueAt, rules, timeZone)}{' '}
          {point?.kind === 'control' ? earlyInWords(point, rules) : ''}
        </p>
      ) : null}
      {recorded && !correcting ? (
        <div>
          <Button look="quiet" onClick={() => setCorrecting(true)}>
            Correct {controlId}
          </Button>
        </div>
      ) : (
        <Folded
          open={mayFold ? !isLongBefore(work.now, dueAt) : null}
          summary={`Write down the out-time at ${controlId}`}
        >
          <RecordTime
            key={recorded?.changedSeq ?? 0}
            {...{ work, by, controlId, dueAt }}
            entryId={visit.entry.entryId}
            dueWords={dueAt === plannedAt ? 'As planned' : 'As due'}
            saidMinutes={recorded?.heldMinutes ?? 0}
            onDone={() => setCorrecting(false)}
          />
        </Folded>
      )}
    </>
  );
}

/** While the work goes on, the form for leaving would stand between the clock and the list of jobs: it opens in time. */
function Folded({ open, summary, children }: { open: boolean | null; summary: string; children: ReactNode }) {
  if (open === null) return children;
  return (
    <Disclosure summary={summary} startOpen={open}>
      {children}
    </Disclosure>
  );
}

function isLongBefore(now: EpochSeconds | null, at: EpochSeconds): boolean {
  return now === null || now < at - LONG_BEFORE_SECONDS;
}

function Due(due: { dueAt: EpochSeconds; plannedAt: EpochSeconds; timeZone: string; word: 'In' | 'Out' }) {
  const { dueAt, plannedAt, timeZone, word } = due;
  const planned = formatClock(plannedAt, timeZone);
  if (dueAt === plannedAt)
    return (
      <p className={styles.statement}>
        {word === 'In'
          ? `Planned in ${planned}. Not recorded yet: the planned times count.`
          : `Out ${planned}, as planned.`}
      </p>
    );
  return (
    <p className={styles.statement}>
      {word} {formatClock(dueAt, timeZone)} by the times recorded so far, planned {planned}.
    </p>
  );
}

function Recorded({
  work,
  visit,
  word,
  controlId,
  pointIndex,
  plannedAt,
  recorded,
}: ControlPartProps & { recorded: ControlTime }) {
  const { replica, state } = work;
  const { timeZone } = replica.itinerary;
  const lateness = latenessAt(latenessQuestionOf(replica, state, visit.entry), pointIndex);
  return (
    <>
      <p className={styles.statement}>
        {word} {formatClock(recorded.writtenAt, timeZone)} at {controlId}
        {lateness ? `. ${latenessInWords(lateness, replica.penaltyRules).join(' ')}` : ''}
      </p>
      <p className={styles.quiet}>
        Due {formatClock(lateness?.dueAt ?? plannedAt, timeZone)}, planned {formatClock(plannedAt, timeZone)}.
        Written down by {nameOf(replica, recorded.recordedBy)}.
      </p>
    </>
  );
}
