import { formatClock } from '@halfshaft/itinerary';
import { useMutation, useQueryClient } from '@tanstack/react-query';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Dialog } from '@/components/dialog';
import { Stack } from '@/components/stack';
import { TextField } from '@/components/text-field';
import { api, problemOf } from '@/lib/api';
import { useClock } from '@/lib/clock';
import { likelyMinutes, offsetInWords, readClockOffset } from './clock-offset';
import type { ClockSheetProps } from './clock-sheet';
import { SaveTrouble } from './trouble';
import { useEventClock } from './use-event-clock';

const NO_TIME = 'Type the time as hours and minutes, such as 10:23, or with seconds, 10:23:40.';

interface SetClockProps extends Omit<ClockSheetProps, 'mayManage'> {
  open: boolean;
  onClose: () => void;
}

/** One press at the moment the control's clock turns to a minute; or what it shows, typed. */
export function SetClock({ teamId, event, receivedAt, open, onClose }: SetClockProps) {
  const { eventId, itinerary, clockOffsetSeconds } = event;
  const [typed, setTyped] = useState('');
  const [error, setError] = useState<string>();
  const clock = useClock();
  const now = useEventClock(event, receivedAt);
  const queries = useQueryClient();
  const update = useMutation(api.event.setClockOffset.mutationOptions());

  async function save(offset: number) {
    await update.mutateAsync({ teamId, eventId, clockOffsetSeconds: offset });
    setTyped('');
    onClose();
    await queries.invalidateQueries({ queryKey: api.event.get.queryKey({ teamId, eventId }) });
  }

  function takeShown(text: string) {
    const offset = readClockOffset(event, { text, pressedAt: clock.now(), receivedAt });
    setError(offset === null ? NO_TIME : undefined);
    // A refusal stands in the dialog, from `update.error`.
    if (offset !== null) save(offset).catch(() => {});
  }

  const choices = typed !== '' || now === null ? [typed] : likelyMinutes(now, itinerary.timeZone);
  return (
    <Dialog open={open} onClose={onClose} title="Our phones against the control’s clock">
      <Stack>
        <p>
          Watch the control’s clock. At the moment it turns to a new minute, press the minute it shows. All
          the team’s clocks go by it from then on.
        </p>
        <p>
          By ours it is <strong>{now === null ? '––:––:––' : withSeconds(now, itinerary.timeZone)}</strong>.{' '}
          {offsetInWords(clockOffsetSeconds)}
        </p>
        <Stack across>
          {choices.map((text) => (
            <Button key={text} busy={update.isPending} busyWords="Saving …" onClick={() => takeShown(text)}>
              {text === '' ? 'It shows this now' : `It shows ${text} now`}
            </Button>
          ))}
        </Stack>
        <TextField
          label="Another time"
          hint="As the control’s clock will show it when you press."
          optional
          autoComplete="off"
          value={typed}
          error={error}
          onChange={(change) => setTyped(change.target.value.trim())}
        />
        {clockOffsetSeconds === 0 ? null : (
          <div>
            <Button look="quiet" busy={update.isPending} onClick={() => save(0).catch(() => {})}>
              No difference
            </Button>
          </div>
        )}
        <SaveTrouble problem={update.error ? problemOf(update.error) : null} />
      </Stack>
    </Dialog>
  );
}

function withSeconds(now: number, timeZone: string): string {
  return `${formatClock(now, timeZone)}:${String(now % 60).padStart(2, '0')}`;
}
