import { pointClock, type RouteTimes } from './point-clock';
import styles from './strip-drawing.module.css';
import type { StripGap, StripLayout } from './strip-layout';

const ROW_HEIGHT = 17;
/** Above the names, for the flag that shows where the car is. */
const HERE_HEIGHT = 20;
const BOX_HALF = 27;
const BOX_INSET = 4;

export interface StripDrawingProps extends RouteTimes {
  layout: StripLayout;
  /** Read instead of the drawing. */
  label: string;
  /** Where the car is; null leaves the mark away. */
  hereMetres: number | null;
}

/** The way as one line: stages thick, road thin, services as gaps with their letter, minutes and in-time. */
export function StripDrawing({ layout, label, hereMetres, ...clocks }: StripDrawingProps) {
  const rows = Math.max(2, ...layout.stages.map((stage) => stage.row + 1));
  const lineY = rows * ROW_HEIGHT + (hereMetres === null ? 18 : 18 + HERE_HEIGHT);
  const height = lineY + BOX_HALF + 48;
  return (
    <svg
      className={styles.drawing}
      viewBox={`0 0 ${layout.width} ${height}`}
      width={layout.width}
      height={height}
      role="img"
      aria-label={label}
    >
      {layout.pieces.map((piece) => (
        <path
          key={`${piece.kind}${piece.fromX}`}
          className={styles[piece.kind]}
          d={`M${piece.fromX} ${lineY}H${piece.toX}`}
        />
      ))}
      {layout.stages.map((stage) => {
        const middle = (stage.fromX + stage.toX) / 2;
        const baseline = lineY - 14 - stage.row * ROW_HEIGHT;
        return (
          <g key={stage.text}>
            {stage.row > 0 ? (
              <path className={styles.leader} d={`M${middle} ${baseline + 3}V${lineY - 8}`} />
            ) : null}
            <text className={styles.stageName} x={middle} y={baseline}>
              {stage.text}
            </text>
          </g>
        );
      })}
      {layout.gaps.map((gap) =>
        gap.kind === 'service' ? (
          <ServiceBox
            key={`service${gap.fromX}`}
            gap={gap}
            lineY={lineY}
            clock={gap.service ? pointClock(clocks, gap.service.inIndex) : ''}
          />
        ) : (
          <LegBreak key={`leg${gap.fromX}`} gap={gap} lineY={lineY} />
        ),
      )}
      <Axis layout={layout} y={lineY + BOX_HALF + 26} />
      {hereMetres === null ? null : (
        <Here x={layout.toX(hereMetres, 'before')} bottomY={lineY + BOX_HALF + 20} />
      )}
    </svg>
  );
}

function ServiceBox({ gap, lineY, clock }: { gap: StripGap; lineY: number; clock: string }) {
  const middle = (gap.fromX + gap.toX) / 2;
  const remote = gap.service?.kind === 'remoteService';
  return (
    <g>
      <rect
        className={remote ? styles.remoteBox : styles.box}
        x={gap.fromX + BOX_INSET}
        y={lineY - BOX_HALF}
        width={gap.toX - gap.fromX - 2 * BOX_INSET}
        height={2 * BOX_HALF}
        rx="2"
      />
      <text className={styles.letter} x={middle} y={lineY - 1}>
        {gap.service?.id}
      </text>
      <text className={styles.minutes} x={middle} y={lineY + 18}>
        {Math.floor((gap.service?.allowedSeconds ?? 0) / 60)} min
      </text>
      <text className={styles.clock} x={middle} y={lineY + BOX_HALF + 16}>
        {clock}
      </text>
    </g>
  );
}

/** A torn edge with the night between: the road does not go on there, the next day does. */
function LegBreak({ gap, lineY }: { gap: StripGap; lineY: number }) {
  const middle = (gap.fromX + gap.toX) / 2;
  return (
    <g>
      <path
        className={styles.tear}
        d={`M${middle - 5} ${lineY + 14}l5-28M${middle + 2} ${lineY + 14}l5-28`}
      />
      <text className={styles.minutes} x={middle} y={lineY + 30}>
        Leg {gap.leg}
      </text>
    </g>
  );
}

const STEPS_KILOMETRES = [1, 2, 5, 10, 20, 25, 50, 100, 200, 500];
const LEAST_STEP_PIXELS = 64;
const EDGE_PIXELS = 26;

function Axis({ layout, y }: { layout: StripLayout; y: number }) {
  const { fromMetres, toMetres, pixelsPerMetre, toX } = layout;
  const step = STEPS_KILOMETRES.find((one) => one * 1000 * pixelsPerMetre >= LEAST_STEP_PIXELS) ?? 1000;
  const first = Math.ceil(fromMetres / 1000 / step);
  const last = Math.floor(toMetres / 1000 / step);
  const marks = Array.from({ length: last - first + 1 }, (_, index) => (first + index) * step);
  return (
    <g>
      {marks.map((kilometres, index) => {
        const x = toX(kilometres * 1000, 'before');
        const anchor = axisClass(x, layout.width);
        return (
          <g key={kilometres}>
            <path className={styles.tick} d={`M${x} ${y - 6}v8`} />
            <text className={anchor} x={x} y={y + 17}>
              {index === marks.length - 1 ? `${kilometres} km` : kilometres}
            </text>
          </g>
        );
      })}
    </g>
  );
}

/** The outermost figures lean inwards, so that the edge does not cut them. */
function axisClass(x: number, width: number): string | undefined {
  if (x < EDGE_PIXELS) return styles.axisStart;
  return x > width - EDGE_PIXELS ? styles.axisEnd : styles.axisText;
}

function Here({ x, bottomY }: { x: number; bottomY: number }) {
  return (
    <g>
      <path className={styles.herePole} d={`M${x} 4V${bottomY}`} />
      <path className={styles.here} d={`M${x} 3h42l-6 9 6 9h-42z`} />
      <text className={styles.hereWord} x={x + 18} y="17">
        car
      </text>
    </g>
  );
}
