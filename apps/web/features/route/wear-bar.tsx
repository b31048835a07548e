import { formatKilometres } from '@halfshaft/itinerary';
import type { Verdict } from '@halfshaft/lifing';
import type { StripLayout } from './strip-layout';
import styles from './wear-bar.module.css';

const HEIGHT = 30;
const TOP = 6;
const THICK = 16;

/** One job under the strip. Distances are along the way, in metres from the start of the event. */
export interface WearRow {
  /** Told apart from the others. */
  id: string;
  label: string;
  /** Where it was last done; 0 when that was before the event. */
  fromMetres: number;
  /** Where it must last to: the next service it can be done at, or the finish. */
  toMetres: number;
  /** Where its limit is passed (`fromMetres` when that is behind); null when not in the rest of the event. */
  limitMetres: number | null;
  verdict: Verdict;
  /** In place of the sentence told from the distances. */
  note?: string;
}

/** The sentence beside a bar. */
export function describeWear(row: WearRow): string {
  if (row.note !== undefined) return row.note;
  if (row.limitMetres === null) return 'lasts to the finish';
  const limit = `limit passed at km ${formatKilometres(row.limitMetres)}`;
  return row.limitMetres <= row.toMetres ? limit : `lasts; ${limit}`;
}

/**
 * The wear of one job: a bar from where it was last done to where its limit is passed, with an end stop there; open at
 * the end when it lasts beyond. A dotted line shows how much further it would have to last. Filled, half filled or
 * outlined by verdict.
 */
export function WearBar({ layout, row }: { layout: StripLayout; row: WearRow }) {
  const passed = row.limitMetres !== null && row.limitMetres <= row.toMetres;
  const endMetres = row.limitMetres ?? Number.POSITIVE_INFINITY;
  const fromX = layout.toX(row.fromMetres, 'after');
  const endX = Math.max(fromX, layout.toX(endMetres, endMetres > layout.toMetres ? 'after' : 'before'));
  const neededX = layout.toX(row.toMetres, 'before');
  const middle = TOP + THICK / 2;
  const stopped = row.limitMetres !== null && row.limitMetres <= layout.toMetres;
  // On paper a leg may begin beyond the limit: then only the dotted rest is drawn.
  const over = endMetres <= layout.fromMetres;
  return (
    <svg
      className={styles.bar}
      viewBox={`0 0 ${layout.width} ${HEIGHT}`}
      width={layout.width}
      height={HEIGHT}
      aria-hidden="true"
    >
      {layout.gaps.map((gap) => (
        <rect
          key={gap.fromX}
          className={styles.gap}
          x={gap.fromX}
          y="0"
          width={gap.toX - gap.fromX}
          height={HEIGHT}
        />
      ))}
      {passed ? <path className={styles.missing} d={`M${endX} ${middle}H${neededX}`} /> : null}
      {over ? null : <Bar fromX={fromX} endX={endX} stopped={stopped} verdict={row.verdict} />}
    </svg>
  );
}

interface BarProps {
  fromX: number;
  endX: number;
  stopped: boolean;
  verdict: Verdict;
}

function Bar({ fromX, endX, stopped, verdict }: BarProps) {
  const bottom = TOP + THICK;
  const closed = `M${fromX} ${TOP}H${endX}V${bottom}H${fromX}z`;
  const open = `M${endX} ${TOP}H${fromX}V${bottom}H${endX}`;
  return (
    <g>
      <path className={styles.ground} d={closed} />
      {verdict === 'doNow' ? <path className={styles.fill} d={closed} /> : null}
      {verdict === 'ifTime' ? (
        <path className={styles.fill} d={`M${fromX} ${TOP + THICK / 2}H${endX}V${bottom}H${fromX}z`} />
      ) : null}
      <path className={styles.edge} d={stopped ? closed : open} />
      {stopped ? <path className={styles.stop} d={`M${endX} ${TOP - 5}V${bottom + 5}`} /> : null}
    </g>
  );
}
