import { formatKilometres } from '@halfshaft/itinerary';
import type { Verdict } from '@halfshaft/lifing';
import { useId } from 'react';
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
  /** Where its limit is passed; null when it is not passed in the rest of the event. */
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
  const clipId = useId();
  const passed = row.limitMetres !== null && row.limitMetres <= row.toMetres;
  const endMetres = row.limitMetres ?? layout.toMetres;
  const fromX = layout.toX(row.fromMetres, 'after');
  const endX = Math.max(fromX + 3, layout.toX(endMetres, 'before'));
  const neededX = layout.toX(row.toMetres, 'before');
  const middle = TOP + THICK / 2;
  const stopped = row.limitMetres !== null && row.limitMetres <= layout.toMetres;
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
      <clipPath id={clipId}>
        <rect x={fromX} y={TOP} width={endX - fromX} height={THICK} />
      </clipPath>
      <g clipPath={`url(#${clipId})`}>
        <rect className={styles.ground} x={fromX} y={TOP} width={endX - fromX} height={THICK} />
        {row.verdict === 'leave' ? null : (
          <rect
            className={styles.fill}
            x={fromX}
            y={row.verdict === 'doNow' ? TOP : middle}
            width={endX - fromX}
            height={THICK}
          />
        )}
      </g>
      <path
        className={styles.edge}
        d={
          stopped
            ? `M${fromX} ${TOP}H${endX}V${TOP + THICK}H${fromX}z`
            : `M${endX} ${TOP}H${fromX}V${TOP + THICK}H${endX}`
        }
      />
      {stopped ? <path className={styles.stop} d={`M${endX} ${TOP - 5}V${TOP + THICK + 5}`} /> : null}
    </svg>
  );
}
