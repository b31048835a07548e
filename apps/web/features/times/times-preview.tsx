import { controlArrivals, type Itinerary, readTimeList, serviceLeaves } from '@halfshaft/itinerary';
import { latenessByControl } from '@halfshaft/reliability';
import { useDeferredValue, useMemo } from 'react';
import { Notice } from '@/components/notice';
import { ControlSentences } from './control-sentences';
import { LatenessReport } from './lateness-report';

export interface TimesPreviewProps {
  source: string;
  itinerary: Itinerary;
  /** Null while what is typed is no number. */
  maxLateMinutes: number | null;
}

/** What a list says before it is saved, once it can be read as a whole. */
export function TimesPreview({ source, itinerary, maxLateMinutes }: TimesPreviewProps) {
  // Ten thousand rows are not read anew at each key.
  const settled = useDeferredValue(source);
  const { passes, problems } = useMemo(() => readTimeList(settled, itinerary), [settled, itinerary]);
  if (problems.length > 0 || maxLateMinutes === null) return null;
  const cars = new Set(passes.map(({ carNumber }) => carNumber)).size;
  const { all } = latenessByControl(controlArrivals(passes, itinerary), maxLateMinutes);
  return (
    <Notice title="What it says, before it is saved">
      <p>
        {passes.length === 1 ? '1 time' : `${passes.length} times`} of {cars === 1 ? '1 car' : `${cars} cars`}
        .
      </p>
      <LatenessReport
        leaves={serviceLeaves(passes, itinerary)}
        itinerary={itinerary}
        maxLateMinutes={maxLateMinutes}
      />
      {all.arrivals > 0 ? (
        <ControlSentences all={all} itinerary={itinerary} maxLateMinutes={maxLateMinutes} />
      ) : null}
    </Notice>
  );
}
