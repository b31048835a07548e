import type { ItineraryText } from '@halfshaft/contract';
import { useEffect, useState } from 'react';
import { type CheckedText, checkText } from './check-text';

const QUIET_MILLIS = 350;

/** The live check: said again once typing has paused. Null before the first time. */
export function useCheckedText(text: ItineraryText): CheckedText | null {
  const [checked, setChecked] = useState<CheckedText | null>(null);
  const { source, timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds } = text;

  useEffect(() => {
    const settings = { timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds };
    const timer = setTimeout(() => setChecked(checkText({ source, ...settings })), QUIET_MILLIS);
    return () => clearTimeout(timer);
  }, [source, timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds]);

  return checked;
}
