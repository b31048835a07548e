import type { Draft, DraftPoint, DraftProblem } from './draft';
import { isUntimedRefuel } from './draft';
import { agrees, expectedTime } from './expected-time';
import { longestSteps } from './longest-step';
import type { EpochSeconds } from './model';
import { estimateStageEnd } from './stage-end';
import { dateOf, instantsOf, printedClock, type WallClock } from './wall-clock';

/** How the times of a draft are written. */
export interface WrittenTimes {
  /** The time of day printed at each point, null where none is. */
  clocks: readonly (WallClock | null)[];
  /** The date given for a leg, on that leg's first point only. */
  dates: readonly (string | null)[];
  /** The date of the first point where its leg gives none. */
  startDate: string;
  /** For a stage whose row prints no gap. */
  defaultGapSeconds: number;
}

interface Candidate {
  at: EpochSeconds;
  twin: EpochSeconds | null;
  skipped: boolean;
}

/**
 * Fills in `at` and `gapSeconds` of each point, in driving order. A printed time of day becomes the first instant not
 * before the point before it: on the same date, or past midnight where the step stays believable. A time that can
 * be neither stays on its date, for the checks to report. A missing time is reckoned from the target time.
 */
export function resolveTimes(draft: Draft, written: WrittenTimes): DraftProblem[] {
  const problems: DraftProblem[] = [];
  const longest = longestSteps(draft.points);
  let before: EpochSeconds | null = null;
  draft.points.forEach((point, index) => {
    const clock = written.clocks[index] ?? null;
    const isGapPrinted = point.gapSeconds !== null || point.unreadable.has('gap');
    if (point.kind === 'stage' && !isGapPrinted) point.gapSeconds = written.defaultGapSeconds;
    const expected = expectedTime(draft, index)?.at ?? null;
    if (clock) {
      const legDate = written.dates[index] ?? null;
      const date = legDate ?? (before === null ? written.startDate : dateOf(before, draft.timeZone));
      const mayRoll = before !== null && legDate === null;
      const candidate = chooseInstant(
        { clock, date, mayRoll, before, expected, longestSeconds: longest[index] ?? 0 },
        draft.timeZone,
      );
      point.at = candidate.at;
      warnOfClockChange(candidate, clock, draft, index, problems);
      if (point.kind === 'stage' && !isGapPrinted)
        point.gapSeconds = printedGap(draft.points, index, point.at);
    } else if (!point.unreadable.has('due')) point.at = expected;
    before = point.at ?? before;
  });
  placeUntimedRefuels(draft);
  return problems;
}

/** Without a gap of its own, a stage's gap is the time between its control and its printed start. */
function printedGap(points: readonly DraftPoint[], index: number, stageAt: EpochSeconds): number | null {
  const control = points[index - 1];
  if (control?.kind !== 'control' || control.at === null || control.at > stageAt) return null;
  return stageAt - control.at;
}

interface Choice {
  clock: WallClock;
  date: string;
  mayRoll: boolean;
  before: EpochSeconds | null;
  expected: EpochSeconds | null;
  longestSeconds: number;
}

function chooseInstant(choice: Choice, timeZone: string): Candidate {
  const { before, expected } = choice;
  const believable = (one: Candidate) =>
    before === null || (one.at >= before && one.at - before <= choice.longestSeconds);
  const choose = (candidates: Candidate[]) =>
    candidates.find((one) => expected !== null && agrees(one.at, expected) && believable(one)) ??
    candidates.find(believable);
  const sameDay = candidatesOn(choice.date, choice.clock, timeZone);
  const chosen =
    choose(sameDay) ??
    (choice.mayRoll && before !== null
      ? choose(candidatesOn(dateOf(before, timeZone, 1), choice.clock, timeZone))
      : undefined) ??
    sameDay.find((one) => before !== null && one.at >= before) ??
    sameDay.at(-1);
  if (!chosen) throw new RangeError(`chooseInstant: ${choice.date} has no instant for this time of day`);
  return chosen;
}

function candidatesOn(date: string, clock: WallClock, timeZone: string): Candidate[] {
  const { instants, skipped } = instantsOf(date, clock, timeZone);
  return instants.map((at, order) => ({ at, twin: instants[1 - order] ?? null, skipped }));
}

function warnOfClockChange(
  candidate: Candidate,
  clock: WallClock,
  draft: Draft,
  index: number,
  problems: DraftProblem[],
): void {
  if (candidate.twin === null && !candidate.skipped) return;
  const label = draft.points[index]?.label ?? '';
  const taken = printedClock(candidate.at, draft.timeZone);
  const written = clockText(clock);
  if (candidate.twin !== null) {
    const other = printedClock(candidate.twin, draft.timeZone);
    problems.push({
      pointIndex: index,
      key: 'due',
      code: 'clock-ambiguous',
      message: `At ${label}, ${written} comes twice because the clocks go back; ${taken} was taken. If the other is meant, write ${other}.`,
    });
  }
  if (candidate.skipped) {
    problems.push({
      pointIndex: index,
      key: 'due',
      code: 'clock-skipped',
      message: `At ${label}, ${written} does not exist because the clocks go forward; ${taken} was taken. Write ${taken} if that is right, or correct the time.`,
    });
  }
}

function clockText(clock: WallClock): string {
  const two = (value: number) => String(value).padStart(2, '0');
  return `${two(Math.floor(clock.secondOfDay / 3600))}:${two(Math.floor((clock.secondOfDay % 3600) / 60))}`;
}

/**
 * A refuel prints no time. It is placed on the road between the timed points around it by its share of the road
 * kilometres, cut to the minute: good enough to draw it in its place, and it is never a time to be kept.
 */
function placeUntimedRefuels(draft: Draft): void {
  draft.points.forEach((point, index) => {
    if (point.at !== null || !isUntimedRefuel(point) || point.unreadable.has('due')) return;
    const previous = draft.points[index - 1];
    if (!previous || previous.at === null) return;
    point.at = previous.at;
    const ahead = draft.points.slice(index).filter((one) => one.leg === point.leg);
    const nextTimed = ahead.findIndex((one) => one.at !== null && one !== point);
    const next = ahead[nextTimed];
    if (!next || next.at === null || next.kind === 'stage') return;
    const roadMetres = ahead.slice(0, nextTimed + 1).reduce((sum, one) => sum + (one.metres ?? 0), 0);
    const roadStartsAt =
      previous.kind === 'control'
        ? previous.at
        : estimateStageEnd({
            stageStartsAt: previous.at,
            stageMetres: Math.max(0, previous.metres ?? 0),
            roadMetres,
            nextControlAt: next.at,
            allowedSeconds: next.allowedSeconds,
            roadTimedFrom: draft.roadTimedFrom,
          });
    const share = roadMetres > 0 ? (point.metres ?? 0) / roadMetres : 0;
    const placed = Math.floor((roadStartsAt + (next.at - roadStartsAt) * share) / 60) * 60;
    point.at = Math.min(Math.max(placed, previous.at), Math.max(next.at, previous.at));
  });
}
