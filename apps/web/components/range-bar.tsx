import { scaleLinear } from 'd3-scale';
import type { ReactNode } from 'react';
import styles from './range-bar.module.css';

export interface RangeBarProps {
  /** What the drawing says, in words: "2.5 (0.8 to 5.4)". */
  children: ReactNode;
  value: number;
  low: number;
  high: number;
  /** Where the drawing ends, so that those of one column can be compared; what reaches further is cut there. */
  top: number;
}

const LONG = 100;
const THICK = 12;

/** A value and how sure it is, drawn below its words: a thick upright in a bar. Nothing is told by the drawing alone. */
export function RangeBar({ children, value, low, high, top }: RangeBarProps) {
  const x = scaleLinear([0, top], [0, LONG]).clamp(true);
  return (
    <span className={styles.range}>
      <span>{children}</span>
      <svg
        className={styles.bar}
        viewBox={`0 0 ${LONG} ${THICK}`}
        preserveAspectRatio="none"
        aria-hidden="true"
      >
        <path className={styles.axis} vectorEffect="non-scaling-stroke" d={`M0 ${THICK / 2}H${LONG}`} />
        <rect
          className={styles.sure}
          vectorEffect="non-scaling-stroke"
          x={x(low)}
          y="2"
          width={x(high) - x(low)}
          height={THICK - 4}
        />
        <path className={styles.value} vectorEffect="non-scaling-stroke" d={`M${x(value)} 0V${THICK}`} />
      </svg>
    </span>
  );
}
