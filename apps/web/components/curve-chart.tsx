'use client';

import { scaleLinear } from 'd3-scale';
import { line as lineOf } from 'd3-shape';
import { useId } from 'react';
import { useElementWidth } from '@/lib/use-element-width';
import { ChartAxis, ChartFrame } from './chart-frame';
import styles from './curve-chart.module.css';

export interface CurveChartProps {
  /** What the drawing shows, in a sentence, for who can't see it; a table with the numbers belongs beside it. */
  says: string;
  /** Below the axis that runs to the right: "stage km". */
  along: string;
  /** How an amount along it is written at a tick. */
  write: (amount: number) => string;
  /** How far the axis runs. */
  end: number;
  /** The upright axis from 0 to `top`, and what stands at it. */
  top: number;
  levels: readonly { at: number; words: string }[];
  line: readonly { x: number; y: number }[];
  /** How sure the line is. */
  band?: readonly { x: number; low: number; high: number }[];
  /** Single things on the lower axis: filled, or outlined. */
  marks?: readonly { x: number; filled: boolean }[];
  /** Dashed uprights with a word at their head. */
  uprights?: readonly { x: number; words: string }[];
}

const HEIGHT = 250;
const LEFT = 84;
const RIGHT = 20;
const TOP = 28;
const BOTTOM = 58;
const NARROWEST = 280;
const TICK_EVERY = 64;
const MARK = 5;

/** A curve over a distance, told by shapes and lines alone: black and white paper shows all of it. */
export function CurveChart(props: CurveChartProps) {
  const { says, along, write, end, top, levels, line, band = [], marks = [], uprights = [] } = props;
  const [place, measured] = useElementWidth<HTMLDivElement>();
  const hatch = useId();
  const width = Math.max(NARROWEST, measured ?? NARROWEST);
  const x = scaleLinear([0, end], [LEFT, width - RIGHT]);
  const y = scaleLinear([0, top], [HEIGHT - BOTTOM, TOP]);
  const draw = lineOf<{ x: number; y: number }>(
    (point) => x(point.x),
    (point) => y(point.y),
  );
  const box = { width, height: HEIGHT, left: LEFT, right: RIGHT, bottom: BOTTOM };
  const edge = [
    ...band.map((each) => ({ x: each.x, y: each.high })),
    ...band.toReversed().map((each) => ({ x: each.x, y: each.low })),
  ];
  return (
    <ChartFrame
      says={says}
      box={box}
      place={place}
      levels={levels.map(({ at, words }) => ({ key: at, y: y(at), words }))}
      ticks={x
        .ticks(Math.floor((width - LEFT) / TICK_EVERY))
        .map((amount) => ({ key: amount, x: x(amount), words: write(amount) }))}
      along={along}
    >
      <pattern id={hatch} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(45)">
        <path className={styles.hatch} d="M0 0v7" />
      </pattern>
      {edge.length > 0 ? <path className={styles.band} fill={`url(#${hatch})`} d={`${draw(edge)}Z`} /> : null}
      <ChartAxis {...box} />
      <path className={styles.line} d={draw(line) ?? undefined} />
      {uprights.map(({ x: at, words }) => (
        <g key={words}>
          <path className={styles.upright} d={`M${x(at)} ${y(0)}V${TOP - 6}`} />
          <text x={x(at)} y={TOP - 11} textAnchor={at > end / 2 ? 'end' : 'start'}>
            {words}
          </text>
        </g>
      ))}
      {marks.map((mark, index) => (
        <circle
          // biome-ignore lint/suspicious/noArrayIndexKey: two may lie at one place, and they never change
          key={index}
          className={mark.filled ? styles.failed : styles.good}
          cx={x(mark.x)}
          cy={y(0)}
          r={MARK}
        />
      ))}
    </ChartFrame>
  );
}
