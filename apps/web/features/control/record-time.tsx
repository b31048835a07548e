'use client';

import { type EpochSeconds, formatClock } from '@halfshaft/itinerary';
import type { PersonId } from '@halfshaft/worklog';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { FieldError } from '@/components/field';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { textFields } from '../bay/text-fields';
import { useDraft } from '../bay/use-draft';
import { readNumber } from '../events/read-number';
import { checkArgs } from '../work/check-args';
import type { LoadedWork } from '../work/work-page';
import styles from './control.module.css';
import { readClock } from './read-clock';

const recordDraft = textFields('clock', 'held');
/** Farther from the due time, the clock on the wall is not what the control wrote. */
const HALF_A_DAY_SECONDS = 12 * 3600;

interface Problem {
  at: 'choice' | 'clock' | 'held';
  sentence: string;
}

export interface RecordTimeProps {
  work: LoadedWork;
  by: PersonId;
  entryId: string;
  /** The control's printed name, or the stage's. */
  controlId: string;
  /** At a stage: its finish, not its start. */
  finish?: true;
  /** When the car is due as planned, or by the times recorded before. */
  dueAt: EpochSeconds;
  /** Null where no such time is printed: it is then only what a typed time must be near to. */
  dueWords: string | null;
  /** Whether minutes the event cost can be told apart here. */
  mayBeHeld?: boolean;
  /** Corrected from here, when a time is recorded already. */
  saidMinutes: number;
  onDone: () => void;
}

/** Two taps: which time, and down it goes. Anything else is typed. */
export function RecordTime(props: RecordTimeProps) {
  const {
    work,
    by,
    entryId,
    controlId,
    finish,
    dueAt,
    dueWords,
    mayBeHeld = true,
    saidMinutes,
    onDone,
  } = props;
  const place = finish ? `${controlId}.finish` : controlId;
  const { timeZone } = work.replica.itinerary;
  const empty = { clock: '', held: saidMinutes === 0 ? '' : String(saidMinutes) };
  const [draft, setDraft, clearDraft] = useDraft(`time.${entryId}.${place}`, recordDraft, empty);
  const [problem, setProblem] = useState<Problem | null>(null);
  const clockOf = (at: EpochSeconds) => formatClock(at, timeZone);
  const nowAt = work.now !== null && Math.abs(work.now - dueAt) < HALF_A_DAY_SECONDS ? work.now : null;
  const [startOpen] = useState(() => draft.held !== '' || !['', clockOf(dueAt)].includes(draft.clock));

  function choose(clock: string) {
    setProblem(null);
    setDraft({ ...draft, clock });
  }

  function record() {
    const read = readDraft(draft, dueAt, timeZone);
    if ('sentence' in read) return setProblem(read);
    const said = { entryId, controlId, ...(finish ? { finish } : {}), ...read };
    const checked = checkArgs('recordTime', said);
    if (!checked.ok) return setProblem(no('held', checked.sentence));
    if (!work.act('recordTime', said, by).ok) return;
    setProblem(null);
    setDraft(empty);
    clearDraft();
    onDone();
  }

  const errorAt = (at: Problem['at']) => (problem?.at === at ? problem.sentence : undefined);
  return (
    <Stack>
      <div className={styles.choices}>
        {dueWords === null ? null : (
          <Button aria-pressed={draft.clock === clockOf(dueAt)} onClick={() => choose(clockOf(dueAt))}>
            {dueWords} {clockOf(dueAt)}
          </Button>
        )}
        {nowAt === null ? null : (
          <Button aria-pressed={draft.clock === clockOf(nowAt)} onClick={() => choose(clockOf(nowAt))}>
            Now {clockOf(nowAt)}
          </Button>
        )}
      </div>
      <FieldError id={`${place}choice`} error={errorAt('choice')} />
      <div className={styles.choices}>
        <Button
          look={draft.clock === '' ? 'plain' : 'main'}
          aria-describedby={problem?.at === 'choice' ? `${place}choice` : undefined}
          onClick={record}
        >
          {draft.clock === '' ? 'Write it down' : `Write down ${draft.clock}`}
        </Button>
      </div>
      <Disclosure
        summary={mayBeHeld ? 'Another time, or the event held us' : 'Another time'}
        startOpen={startOpen || (dueWords === null && nowAt === null)}
      >
        <Stack>
          <div className={styles.typed}>
            <TextField
              label="Time on the card"
              hint={mayBeHeld ? 'Hours and minutes, as the control wrote them.' : 'Hours and minutes.'}
              autoComplete="off"
              value={draft.clock}
              error={errorAt('clock')}
              onChange={(event) => choose(event.target.value)}
            />
          </div>
          {mayBeHeld ? (
            <div className={styles.typed}>
              <NumberField
                label="The event held us"
                hint="A delayed stage, a queue, a closed road: what of the lateness is not ours."
                unit="min"
                whole
                optional
                value={draft.held}
                error={errorAt('held')}
                onChange={(event) => setDraft({ ...draft, held: event.target.value })}
              />
            </div>
          ) : null}
        </Stack>
      </Disclosure>
    </Stack>
  );
}

function readDraft({ clock, held }: { clock: string; held: string }, dueAt: EpochSeconds, timeZone: string) {
  if (clock.trim() === '') return no('choice', 'Choose a time first, or type it below.');
  const writtenAt = readClock(clock, dueAt, timeZone);
  if (writtenAt === null) return no('clock', 'Type the time as hours and minutes, such as 13:27.');
  return { writtenAt, heldMinutes: held.trim() === '' ? 0 : readNumber(held) };
}

function no(at: Problem['at'], sentence: string): Problem {
  return { at, sentence };
}
