import type { ItineraryText } from '@halfshaft/contract';
import { useEffect, useState } from 'react';
import { type CheckedText, checkText } from './check-text';

const QUIET_MILLIS = 350;

export interface LiveReading {
  /** Null before the first time. */
  checked: CheckedText | null;
  /** Reads at once what was not typed letter by letter, so that nothing is shown that is no longer true. */
  checkNow: (text: ItineraryText) => void;
}

/** The live check: said again once typing has paused. */
export function useCheckedText(text: ItineraryText): LiveReading {
  const [checked, setChecked] = useState<CheckedText | null>(null);
  const { source, timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds, printedFor } =
    text;

  useEffect(() => {
    const timing = { roadTimedFrom, startIntervalSeconds, defaultGapSeconds, printedFor };
    const timer = setTimeout(
      () => setChecked(checkText({ source, timeZone, startsOn, ...timing })),
      QUIET_MILLIS,
    );
    return () => clearTimeout(timer);
  }, [source, timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds, printedFor]);

  return { checked, checkNow: (now) => setChecked(checkText(now)) };
}
