'use client';

import { actionArgs } from '@halfshaft/contract';
import { type EpochSeconds, formatClock, toWholeMinute } from '@halfshaft/itinerary';
import type { PersonId } from '@halfshaft/worklog';
import { useState } from 'react';
import { z } from 'zod';
import { Button } from '@/components/button';
import { Disclosure } from '@/components/disclosure';
import { NumberField } from '@/components/number-field';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { useDraft } from '../bay/use-draft';
import { readNumber } from '../events/read-number';
import type { LoadedWork } from '../work/work-page';
import styles from './control.module.css';
import { readClock } from './read-clock';

const recordDraft = z.object({ clock: z.string(), held: z.string() });
/** Farther from the due time, the clock on the wall is not what the control wrote. */
const HALF_A_DAY_SECONDS = 12 * 3600;
const NO_CLOCK = 'Type the time as hours and minutes, such as 13:27.';

export interface RecordTimeProps {
  work: LoadedWork;
  by: PersonId;
  entryId: string;
  controlId: string;
  /** Where the car is due as planned, or by the times recorded before. */
  dueAt: EpochSeconds;
  dueWords: string;
  /** Corrected from here, when a time is recorded already. */
  saidMinutes: number;
  onDone: () => void;
}

/** Two taps: which time, and down it goes. Anything else is typed. */
export function RecordTime(props: RecordTimeProps) {
  const { work, by, entryId, controlId, dueAt, dueWords, saidMinutes, onDone } = props;
  const { timeZone } = work.replica.itinerary;
  const empty = { clock: '', held: saidMinutes === 0 ? '' : String(saidMinutes) };
  const [draft, setDraft, clearDraft] = useDraft(`time.${entryId}.${controlId}`, recordDraft, empty);
  const [problem, setProblem] = useState<{ at: 'clock' | 'held'; sentence: string } | null>(null);
  const clockOf = (at: EpochSeconds) => formatClock(at, timeZone);
  const nowAt = work.now !== null && Math.abs(work.now - dueAt) < HALF_A_DAY_SECONDS ? work.now : null;

  function choose(clock: string) {
    setProblem(null);
    setDraft({ ...draft, clock });
  }

  function record() {
    const writtenAt = readClock(draft.clock, dueAt, timeZone);
    if (writtenAt === null) return setProblem({ at: 'clock', sentence: NO_CLOCK });
    const heldMinutes = draft.held.trim() === '' ? 0 : readNumber(draft.held);
    const shape = actionArgs.recordTime.shape.heldMinutes.safeParse(heldMinutes);
    if (!shape.success)
      return setProblem({ at: 'held', sentence: shape.error.issues[0]?.message ?? 'Type whole minutes.' });
    const done = work.act('recordTime', { entryId, controlId, writtenAt, heldMinutes: shape.data }, by);
    if (!done.ok) return;
    setProblem(null);
    setDraft(empty);
    clearDraft();
    onDone();
  }

  const errorAt = (at: 'clock' | 'held') => (problem?.at === at ? problem.sentence : undefined);
  return (
    <Stack>
      <div className={styles.choices}>
        <Button aria-pressed={draft.clock === clockOf(dueAt)} onClick={() => choose(clockOf(dueAt))}>
          {dueWords} {clockOf(dueAt)}
        </Button>
        {nowAt === null ? null : (
          <Button
            aria-pressed={draft.clock === clockOf(nowAt)}
            onClick={() => choose(clockOf(toWholeMinute(nowAt)))}
          >
            Now {clockOf(nowAt)}
          </Button>
        )}
      </div>
      <div className={styles.typed}>
        <TextField
          label="Time on the card"
          hint="Hours and minutes, as the control wrote them."
          inputMode="text"
          autoComplete="off"
          value={draft.clock}
          error={errorAt('clock')}
          onChange={(event) => choose(event.target.value)}
        />
      </div>
      <Disclosure summary="More" startOpen={draft.held !== ''}>
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
      </Disclosure>
      <div className={styles.choices}>
        <Button look="main" onClick={record}>
          {draft.clock === '' ? 'Write it down' : `Write down ${draft.clock}`}
        </Button>
      </div>
    </Stack>
  );
}
