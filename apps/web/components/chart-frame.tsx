import type { ReactNode, Ref } from 'react';
import styles from './chart-frame.module.css';

/** The drawing's size and the room around what is drawn, in its own units, which are those of the page. */
export interface ChartBox {
  width: number;
  height: number;
  left: number;
  right: number;
  bottom: number;
}

export interface ChartFrameProps {
  /** What the drawing shows, in a sentence, for who can't see it; a table with the numbers belongs beside it. */
  says: string;
  box: ChartBox;
  /** The element whose width the drawing takes. */
  place: Ref<HTMLDivElement>;
  /** Lines across, with their words at the left. */
  levels: readonly { key: number; y: number; words: string }[];
  /** Words below the axis that runs to the right. */
  ticks: readonly { key: number; x: number; words: string }[];
  /** What that axis tells: "stage km". */
  along: string;
  children: ReactNode;
}

/**
 * What a curve is drawn on. Drawings are made here, with a library for scales and shapes: one for whole charts writes a style
 * element into its drawing, which the content policy of the pages does not let through.
 */
export function ChartFrame({ says, box, place, levels, ticks, along, children }: ChartFrameProps) {
  const { width, height, left, right } = box;
  return (
    <div className={styles.chart} ref={place}>
      <svg viewBox={`0 0 ${width} ${height}`} width={width} height={height} role="img" aria-label={says}>
        {levels.map(({ key, y, words }) => (
          <g key={key}>
            <path className={styles.grid} d={`M${left} ${y}H${width - right}`} />
            <text x={left - 8} y={y + 5} textAnchor="end">
              {words}
            </text>
          </g>
        ))}
        {ticks.map(({ key, x, words }) => (
          <text key={key} x={x} y={height - 28} textAnchor="middle">
            {words}
          </text>
        ))}
        <text x={width - right} y={height - 6} textAnchor="end">
          {along}
        </text>
        {children}
      </svg>
    </div>
  );
}

/** Over what lies below it, so each drawing says when. */
export function ChartAxis({ width, height, left, right, bottom }: ChartBox) {
  return <path className={styles.axis} d={`M${left} ${height - bottom}H${width - right}`} />;
}
