'use client';

import { scaleLinear } from 'd3-scale';
import { curveStepAfter, line } from 'd3-shape';
import { useElementWidth } from '@/lib/use-element-width';
import { ChartAxis, ChartFrame } from './chart-frame';
import { spreadLabels } from './spread-labels';
import styles from './step-chart.module.css';

export interface StepCurve {
  key: string;
  /** Stands at the end of the curve, "Off road", and below it how high that is, "12 %". */
  name: string;
  amount: string;
  /** Each holds its height until the next. */
  steps: readonly { x: number; y: number }[];
}

export interface StepChartProps {
  /** What the drawing shows, in a sentence, for who can't see it; a table with the numbers belongs beside it. */
  says: string;
  /** Below the axis that runs to the right: "stage km". */
  along: string;
  /** How far the axis runs. */
  end: number;
  /** How a height is written at its line. */
  write: (height: number) => string;
  /** At most five, so that each has a dash of its own. */
  curves: readonly StepCurve[];
}

const HEIGHT = 280;
const LEFT = 52;
const RIGHT = 116;
const TOP = 16;
const BOTTOM = 52;
const NARROWEST = 300;
const TICK_EVERY = 56;
const LEVELS = 4;
const LABEL_APART = 37;
const LINE = 17;
const LABEL_GAP = 22;
/** Told apart on black and white paper, too. */
const DASHES = [undefined, '10 5', '2 4', '14 4 2 4', '6 3'];

/** Curves that rise in steps, each named at its end and drawn with a dash of its own. */
export function StepChart({ says, along, end, write, curves }: StepChartProps) {
  const [place, measured] = useElementWidth<HTMLDivElement>();
  const width = Math.max(NARROWEST, measured ?? NARROWEST);
  const lastOf = ({ steps }: StepCurve) => steps.at(-1)?.y ?? 0;
  const highest = Math.max(0, ...curves.map(lastOf));
  const x = scaleLinear([0, end], [LEFT, width - RIGHT]);
  const y = scaleLinear([0, highest > 0 ? highest : 1], [HEIGHT - BOTTOM, TOP]).nice(LEVELS);
  const draw = line<{ x: number; y: number }>(
    (step) => x(step.x),
    (step) => y(step.y),
  ).curve(curveStepAfter);
  const labels = spreadLabels(
    curves.map((curve) => y(lastOf(curve))),
    { apart: LABEL_APART, top: TOP, bottom: HEIGHT - BOTTOM },
  );
  const box = { width, height: HEIGHT, left: LEFT, right: RIGHT, bottom: BOTTOM };
  const tickCount = Math.max(1, Math.floor((width - LEFT - RIGHT) / TICK_EVERY));
  return (
    <ChartFrame
      says={says}
      box={box}
      place={place}
      levels={y.ticks(LEVELS).map((level) => ({ key: level, y: y(level), words: write(level) }))}
      ticks={x.ticks(tickCount).map((amount) => ({ key: amount, x: x(amount), words: `${amount}` }))}
      along={along}
    >
      <ChartAxis {...box} />
      {curves.map((curve, index) => {
        const drawn = [{ x: 0, y: 0 }, ...curve.steps, { x: end, y: lastOf(curve) }];
        const dash = DASHES[index % DASHES.length];
        const at = labels[index] ?? 0;
        return (
          <g key={curve.key}>
            <path className={styles.line} strokeDasharray={dash} d={draw(drawn) ?? undefined} />
            <path
              className={styles.leader}
              strokeDasharray={dash}
              d={`M${width - RIGHT} ${y(lastOf(curve))}L${width - RIGHT + LABEL_GAP} ${at}`}
            />
            <text x={width - RIGHT + LABEL_GAP + 4} y={at + 5}>
              {curve.name}
              <tspan x={width - RIGHT + LABEL_GAP + 4} dy={LINE}>
                {curve.amount}
              </tspan>
            </text>
          </g>
        );
      })}
    </ChartFrame>
  );
}
