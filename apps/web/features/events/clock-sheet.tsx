'use client';

import type { EventReplica } from '@halfshaft/contract';
import { useState } from 'react';
import { Button } from '@/components/button';
import { Sheet } from '@/components/sheet';
import { offsetInWords } from './clock-offset';
import { SetClock } from './set-clock';

export interface ClockSheetProps {
  teamId: string;
  event: EventReplica;
  /** This device's clock when the event came. */
  receivedAt: number;
  mayManage: boolean;
}

/** How the controls' clock stands to ours. Whoever cannot set it sees it only where there is a difference. */
export function ClockSheet({ teamId, event, receivedAt, mayManage }: ClockSheetProps) {
  const [setting, setSetting] = useState(false);
  if (!mayManage && event.clockOffsetSeconds === 0) return null;
  const change = (
    <Button look="quiet" aria-label="Set by the control’s clock" onClick={() => setSetting(true)}>
      Set
    </Button>
  );
  return (
    <Sheet title="The controls’ clock" aside={mayManage ? change : null}>
      <p>{offsetInWords(event.clockOffsetSeconds)}</p>
      {mayManage ? (
        <SetClock {...{ teamId, event, receivedAt }} open={setting} onClose={() => setSetting(false)} />
      ) : null}
    </Sheet>
  );
}
