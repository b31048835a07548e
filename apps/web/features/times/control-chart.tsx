import type { LatenessByControl } from '@halfshaft/reliability';
import { scaleLinear } from 'd3-scale';
import styles from './control-chart.module.css';
import { atControlInWords } from './control-words';

type Figures = LatenessByControl['controls'][number];

export interface ControlChartProps {
  /** In driving order. */
  controls: readonly Figures[];
  /** "TC2A, Service in", by the control. */
  nameOf: (controlId: string) => string;
  maxLateMinutes: number;
}

const LONG = 100;
const THICK = 22;
const LATE = 12;

/**
 * How late cars came to each control, one below the other and to one scale: to the worst, with an upright at the middle one,
 * and below it what the worst way there cost. Each row says its numbers, so nothing is told by the drawing alone.
 */
export function ControlChart({ controls, nameOf, maxLateMinutes }: ControlChartProps) {
  const worst = Math.max(...controls.map(({ late }) => late.worstMinutes ?? 0));
  const top = Math.max(worst, maxLateMinutes, 1);
  const hasLost = controls.some(({ lost }) => lost.count > 0);
  return (
    <figure className={styles.chart}>
      <ol className={styles.rows} aria-label="Lateness along the route">
        {controls.map((figures) => (
          <li key={figures.controlId} className={styles.row}>
            <span className={styles.name}>{nameOf(figures.controlId)}</span>
            <span>{atControlInWords(figures)}</span>
            <Bars figures={figures} top={top} maximum={maxLateMinutes} />
          </li>
        ))}
      </ol>
      <figcaption className={styles.key}>
        <span>
          <Sample className={styles.late} /> late, to the worst; the upright is the middle one
        </span>
        {hasLost ? (
          <span>
            <Sample className={styles.lost} /> lost on the way, at worst
          </span>
        ) : null}
        <span>
          <svg className={styles.sample} viewBox="0 0 20 12" aria-hidden="true">
            <path className={styles.maximum} d="M10 0V12" />
          </svg>
          the {maxLateMinutes} min that the event allows
        </span>
      </figcaption>
    </figure>
  );
}

interface BarsProps {
  figures: Figures;
  /** Minutes at the right edge. */
  top: number;
  maximum: number;
}

function Bars({ figures: { late, lost }, top, maximum }: BarsProps) {
  const x = scaleLinear([0, top], [0, LONG]);
  return (
    <svg
      className={styles.bars}
      viewBox={`0 0 ${LONG} ${THICK}`}
      preserveAspectRatio="none"
      aria-hidden="true"
    >
      <rect className={styles.late} x="0" y="0" width={x(late.worstMinutes ?? 0)} height={LATE} />
      <path className={styles.middle} d={`M${x(late.medianMinutes ?? 0)} 0V${LATE}`} />
      <rect className={styles.lost} x="0" y={LATE + 2} width={x(lost.worstMinutes ?? 0)} height="6" />
      <path className={styles.axis} d={`M0 0V${THICK}`} />
      <path className={styles.maximum} d={`M${x(maximum)} 0V${THICK}`} />
    </svg>
  );
}

function Sample({ className }: { className: string | undefined }) {
  return (
    <svg className={styles.sample} viewBox="0 0 20 12" aria-hidden="true">
      <rect className={className} x="1" y="1" width="18" height="10" />
    </svg>
  );
}
