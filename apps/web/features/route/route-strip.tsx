'use client';

import {
  formatKilometres,
  type Itinerary,
  type PointTime,
  routeMetresAt,
  type ServiceWindow,
  type StartPosition,
} from '@halfshaft/itinerary';
import { Disclosure } from '@/components/disclosure';
import { useElementWidth } from '@/lib/use-element-width';
import { useSlideTo } from '@/lib/use-slide-to';
import { StateMark } from '../task/state-mark';
import type { RouteTimes } from './point-clock';
import { RouteList } from './route-list';
import styles from './route-strip.module.css';
import { StripDrawing } from './strip-drawing';
import { layoutStrip, type StripLayout } from './strip-layout';
import { describeWear, WearBar, type WearRow } from './wear-bar';

const LEAST_PIXELS_PER_KILOMETRE = 2.4;
/** Before the page is measured, and on paper: A4 less its margins. */
const PAPER_PIXELS = 690;

export interface RouteStripProps {
  itinerary: Itinerary;
  /** From `servicesOf(itinerary)`. */
  services: readonly ServiceWindow[];
  /** Jobs drawn under the line. */
  rows?: readonly WearRow[];
  startPosition?: StartPosition;
  /** What was written for the car so far, and what follows from it; left away where only the timetable counts. */
  times?: readonly PointTime[];
  /** Where the car is, in metres from the start; left away when it is not known. */
  hereMetres?: number | null;
}

/** The event as one line along the kilometres, with the wear of jobs under it and the same in words below. */
export function RouteStrip(props: RouteStripProps) {
  const { itinerary, services, rows = [], startPosition = 1, times, hereMetres = null } = props;
  const [scroller, width] = useElementWidth<HTMLDivElement>();
  const lastIndex = itinerary.points.length - 1;

  const screen = layoutStrip({
    itinerary,
    services,
    fromIndex: 0,
    toIndex: lastIndex,
    width: width ?? PAPER_PIXELS,
    leastPixelsPerKilometre: LEAST_PIXELS_PER_KILOMETRE,
  });
  const label = describeRoute(itinerary, services);
  const tooWide = width !== null && screen.width > width;
  const hereX = hereMetres === null ? null : screen.toX(hereMetres, 'before');
  useSlideTo(scroller, tooWide ? hereX : null);
  const legs = [...new Set(itinerary.points.map((point) => point.leg))];

  if (lastIndex < 1) return null;

  return (
    <figure className={styles.figure}>
      <figcaption className={styles.caption}>{label}</figcaption>
      {tooWide ? (
        <p className={styles.hint}>
          <svg viewBox="0 0 40 14" width="40" height="14" aria-hidden="true">
            <path d="M8 2 2 7l6 5M32 2l6 5-6 5M2 7h36" />
          </svg>
          Slide the line sideways to see all of it
        </p>
      ) : null}
      {/* A part that scrolls must be reachable by keyboard, hence the tab stop. */}
      <section
        className={styles.scroller}
        ref={scroller}
        tabIndex={tooWide ? 0 : undefined}
        aria-label={tooWide ? 'The line, slides sideways' : undefined}
      >
        <StripWithRows layout={screen} {...{ itinerary, startPosition, times, hereMetres, label, rows }} />
      </section>
      <div className={styles.paper}>
        {legs.map((leg) => (
          <StripWithRows
            key={leg}
            heading={`Leg ${leg}`}
            layout={layoutLeg(itinerary, services, leg)}
            {...{ itinerary, startPosition, times, hereMetres: null, label: `Leg ${leg}`, rows }}
          />
        ))}
      </div>
      <Disclosure summary="The route as a list" printOpen={rows.length === 0}>
        <RouteList {...{ itinerary, services, startPosition, times }} />
      </Disclosure>
    </figure>
  );
}

interface StripWithRowsProps extends RouteTimes {
  heading?: string;
  layout: StripLayout;
  hereMetres: number | null;
  label: string;
  rows: readonly WearRow[];
}

function StripWithRows({ heading, layout, rows, ...drawing }: StripWithRowsProps) {
  const shown = rows.filter((row) => row.fromMetres < layout.toMetres && endOf(row) > layout.fromMetres);
  return (
    <div className={styles.strip}>
      {heading ? <p className={styles.leg}>{heading}</p> : null}
      <StripDrawing layout={layout} {...drawing} />
      {shown.length > 0 ? (
        <ul className={styles.rows}>
          {shown.map((row) => (
            <li key={row.id} className={styles.row}>
              <p className={styles.rowWords}>
                <StateMark state={row.verdict} words={row.label} />
                <span className={styles.note}>{describeWear(row)}</span>
              </p>
              <WearBar layout={layout} row={row} />
            </li>
          ))}
        </ul>
      ) : null}
    </div>
  );
}

function endOf(row: WearRow): number {
  return Math.max(row.toMetres, row.limitMetres ?? Number.POSITIVE_INFINITY);
}

/** On paper nothing slides, so each leg has a line of its own. */
function layoutLeg(itinerary: Itinerary, services: readonly ServiceWindow[], leg: number): StripLayout {
  const indexes = itinerary.points.flatMap((point, index) => (point.leg === leg ? [index] : []));
  const fromIndex = indexes[0] ?? 0;
  const toIndex = indexes.at(-1) ?? fromIndex;
  return layoutStrip({
    itinerary,
    services,
    fromIndex,
    toIndex,
    width: PAPER_PIXELS,
    leastPixelsPerKilometre: 0,
  });
}

function describeRoute(itinerary: Itinerary, services: readonly ServiceWindow[]): string {
  const stages = itinerary.points.filter((point) => point.kind === 'stage').length;
  const last = itinerary.points.at(-1);
  const end = last?.kind === 'stage' ? last.stageMetres : 0;
  const kilometres = formatKilometres(routeMetresAt(itinerary, itinerary.points.length - 1) + end);
  return `${counted(stages, 'stage')}, ${counted(services.length, 'service')}, ${kilometres} km in all`;
}

function counted(count: number, one: string): string {
  return `${count} ${count === 1 ? one : `${one}s`}`;
}
