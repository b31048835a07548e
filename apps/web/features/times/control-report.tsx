import type { ControlArrival, Itinerary } from '@halfshaft/itinerary';
import { latenessByControl } from '@halfshaft/reliability';
import { Disclosure } from '@/components/disclosure';
import { ControlChart } from './control-chart';
import { ControlSentences } from './control-sentences';
import { ControlTable } from './control-table';
import { inTimeInWords } from './control-words';
import { HowLostIsReckoned } from './how-lost-is-reckoned';

export interface ControlReportProps {
  arrivals: readonly ControlArrival[];
  itinerary: Itinerary;
  maxLateMinutes: number;
}

/** How late cars of one event came to the controls that are no way out of service: drawn along the route, figures behind. */
export function ControlReport({ arrivals, itinerary, maxLateMinutes }: ControlReportProps) {
  const { all, controls } = latenessByControl(arrivals, maxLateMinutes);
  const names = new Map(itinerary.points.map(({ id, name }) => [id, name === '' ? id : `${id}, ${name}`]));
  const nameOf = (controlId: string) => names.get(controlId) ?? controlId;
  const late = controls.filter((figures) => figures.late.count > 0);
  const inTime = controls.flatMap(({ controlId, late: { count } }) => (count === 0 ? [controlId] : []));
  const rows = controls.map((figures) => ({
    key: figures.controlId,
    name: nameOf(figures.controlId),
    figures,
  }));
  return (
    <>
      <ControlSentences all={all} itinerary={itinerary} maxLateMinutes={maxLateMinutes} />
      {late.length > 0 ? (
        <>
          <ControlChart controls={late} nameOf={nameOf} maxLateMinutes={maxLateMinutes} />
          <p>{inTimeInWords(inTime)}</p>
        </>
      ) : null}
      {rows.length > 0 ? (
        <Disclosure summary="Every figure, and how it is reckoned" printOpen>
          <HowLostIsReckoned />
          <ControlTable caption="Late at the other controls" nameHeading="Control" rows={rows} />
        </Disclosure>
      ) : null}
    </>
  );
}
