import type { Bounds, LevelOption, Refusal } from '../model';
import { refuse } from '../refuse';
import { type CausedLife, type CauseIncidence, cumulativeIncidence } from '../survival/cumulative-incidence';
import { stepAt } from '../survival/step-at';
import type { FieldStretch } from './field-stretch';

export interface StopsAtMark {
  distance: number;
  /** Cars that drove at least this far without a stop. */
  running: number;
  /** Share that nothing has stopped. */
  going: number;
  /** Share stopped by each cause so far, in the order asked for. */
  causes: { cause: string; share: number; bounds: Bounds | null }[];
}

/** The share stopped by one cause, as a curve that keeps its height until the next step. */
export interface StopsCurve {
  cause: string;
  /** Only where it rises. */
  steps: { distance: number; share: number; bounds: Bounds | null }[];
}

export interface StopsAlong {
  ok: true;
  starts: number;
  furthest: number;
  marks: StopsAtMark[];
  /** In the order asked for; of a cause that stopped nobody without a step. */
  curves: StopsCurve[];
}

/**
 * Of all cars that started: which share was stopped, for the first time and by which cause, by how far along the stages.
 *
 * Only the stretch of each car from its start counts. One that came back had its first stop before; how it went on is in
 * `stopRates`. Cumulative incidence (`cumulativeIncidence`): the causes compete, so their shares add up with the share
 * that goes on to 1. Over several events it takes their roads for alike; a shorter event is censored at its end.
 *
 * @throws RangeError when a distance is negative
 * @example
 * stopsAlong([{ from: 0, to: 30, cause: 'off', unsure: false }, { from: 0, to: 80, cause: null, unsure: false }], ['off'])
 * // marks at 10, 20 … 80: going 1 before 30, 0.5 from there on
 */
export function stopsAlong(
  stretches: readonly FieldStretch[],
  causes: readonly string[],
  options: LevelOption = {},
): StopsAlong | Refusal<'noLives'> {
  const lives = firstStretches(stretches);
  const furthest = Math.max(0, ...lives.map(({ distance }) => distance));
  const incidence = cumulativeIncidence(lives, options);
  if (!incidence.ok && incidence.reason === 'noLives') return refuse('noLives', incidence.says);
  const marks = distanceMarks(furthest).map((distance) => ({
    distance,
    running: lives.filter((life) => life.distance >= distance).length,
    going: incidence.ok ? (stepAt(incidence.surviving, distance)?.surviving ?? 1) : 1,
    causes: causes.map((cause) => shareAt(incidence.ok ? incidence.causes : [], cause, distance)),
  }));
  const curves = causes.map((cause) => curveOf(incidence.ok ? incidence.causes : [], cause));
  return { ok: true, starts: lives.length, furthest, marks, curves };
}

function curveOf(incidences: readonly CauseIncidence[], cause: string): StopsCurve {
  const steps = incidences.find((one) => one.cause === cause)?.steps ?? [];
  const rising = steps.filter(({ failures }) => failures > 0);
  return {
    cause,
    steps: rising.map(({ distance, incidence, bounds }) => ({ distance, share: incidence, bounds })),
  };
}

function firstStretches(stretches: readonly FieldStretch[]): CausedLife[] {
  return stretches.filter(({ from }) => from === 0).map(({ to, cause }) => ({ distance: to, cause }));
}

function shareAt(curves: readonly CauseIncidence[], cause: string, distance: number) {
  const step = stepAt(curves.find((curve) => curve.cause === cause)?.steps ?? [], distance);
  return { cause, share: step?.incidence ?? 0, bounds: step?.bounds ?? null };
}

const MOST_MARKS = 10;
const ROUND = [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000, 5000];

/** Round distances up to the furthest, at most ten, and the furthest itself. */
function distanceMarks(furthest: number): number[] {
  const step = ROUND.find((one) => furthest / one <= MOST_MARKS) ?? furthest;
  const marks = Array.from({ length: Math.floor(furthest / step) }, (_, index) => (index + 1) * step);
  return marks.at(-1) === furthest ? marks : [...marks, furthest];
}
