import type { Draft, DraftPoint, DraftProblem } from './draft';
import { timedFrom } from './draft';
import { agrees, expectedTime } from './expected-time';
import { formatClock, formatDay } from './format';
import { isInstant } from './is-instant';
import { MAX_GAP_SECONDS, MAX_STAGE_METRES_PER_HOUR } from './limits';
import { longestSteps } from './longest-step';
import type { EpochSeconds } from './model';

type Unplaced = Omit<DraftProblem, 'pointIndex'>;

/** Times: there, in order, believable, and the same whether printed or reckoned from the target time. */
export function checkTimes(draft: Draft): DraftProblem[] {
  const longest = longestSteps(draft.points);
  let before: DraftPoint | null = null;
  return draft.points.flatMap((point, pointIndex) => {
    const problems = checkLengths(point, longest[pointIndex] ?? 0);
    if (point.at === null) problems.push(...checkMissing(draft, pointIndex));
    else if (!isInstant(point.at)) {
      problems.push({
        key: 'due',
        code: 'time-malformed',
        message: `The time of ${point.label} is no time. Enter it again, as 08:13.`,
      });
    } else {
      const step = checkStep(draft, point, before, longest[pointIndex] ?? 0);
      if (step) problems.push(step);
      // An absurd target is told once, not again as a mismatch.
      else if (problems.length === 0) problems.push(...checkAgainstTarget(draft, pointIndex, point.at));
      before = point;
    }
    return problems.map((problem) => ({ pointIndex, ...problem }));
  });
}

function checkLengths(point: DraftPoint, longestSeconds: number): Unplaced[] {
  if (point.kind === 'stage') {
    const gap = point.gapSeconds;
    if (gap === null || (Number.isSafeInteger(gap) && gap >= 0 && gap <= MAX_GAP_SECONDS)) return [];
    return [
      {
        key: 'gap',
        code: 'gap-absurd',
        message: `From its control to the start of ${point.label} are ${duration(gap)}; more than ${duration(MAX_GAP_SECONDS)} cannot be right. Correct the gap or the two times.`,
      },
    ];
  }
  const allowed = point.allowedSeconds;
  if (allowed === null) return [];
  if (allowed === 0) {
    return [
      {
        key: 'target',
        code: 'target-zero',
        message: `The target time of ${point.label} is 0:00. Write the time allowed, or leave the cell empty.`,
      },
    ];
  }
  if (Number.isSafeInteger(allowed) && allowed > 0 && allowed <= longestSeconds) return [];
  return [
    {
      key: 'target',
      code: 'target-absurd',
      message: `The target time of ${point.label} is ${duration(allowed)}; more than ${duration(longestSeconds)} cannot be right here. Write it in hours and minutes, as 0:44.`,
    },
  ];
}

function checkMissing(draft: Draft, index: number): Unplaced[] {
  const point = draft.points[index];
  if (!point || point.unreadable.has('due') || point.unreadable.has('target') || point.unreadable.has('gap'))
    return [];
  const from = timedFrom(draft.points, index);
  const lacksTarget = point.kind === 'control' && point.allowedSeconds === null;
  // A time that is missing only because the one before it is has been told already, at the one before it.
  if (from && from.at === null && !lacksTarget) return [];
  const reckoned = from ? ' and no target time from which to reckon it' : '';
  return [
    {
      key: 'due',
      code: 'time-missing',
      message: `${point.label} has no time for the first car${reckoned}. Write the time of day, as 08:13.`,
    },
  ];
}

function checkStep(
  draft: Draft,
  point: DraftPoint,
  before: DraftPoint | null,
  longestSeconds: number,
): Unplaced | null {
  if (point.at === null || !before || before.at === null) return null;
  const step = point.at - before.at;
  if (step >= 0 && step <= longestSeconds) return null;
  const from = `${before.label} at ${clockOf(before.at, draft)}`;
  const to = `${point.label} at ${clockOf(point.at, draft)}`;
  if (step > 0) {
    const message = `From ${from} to ${to} is longer than ${duration(longestSeconds)}. Correct one of the two times, or begin a new leg with its date.`;
    return { key: 'due', code: 'time-leap', message };
  }
  if (isServiceLeft(before, point)) {
    const message = `Service from ${from} to ${to} ends before it starts. Correct one of the two times.`;
    return { key: 'due', code: 'service-ends-before-it-starts', message };
  }
  const message = `${to} comes before ${from}, and it cannot be past midnight. Correct one of the two times.`;
  return { key: 'due', code: 'time-backwards', message };
}

function isServiceLeft(before: DraftPoint, point: DraftPoint): boolean {
  return (
    (before.roles.includes('serviceIn') && point.roles.includes('serviceOut')) ||
    (before.roles.includes('remoteServiceIn') && point.roles.includes('remoteServiceOut'))
  );
}

function checkAgainstTarget(draft: Draft, index: number, at: EpochSeconds): Unplaced[] {
  const expected = expectedTime(draft, index);
  const point = draft.points[index];
  if (!point || !expected) return [];
  if (expected.isEstimate) return checkStageTime(draft, index, at);
  if (agrees(at, expected.at)) return [];
  const what = point.kind === 'stage' ? 'gap' : 'target time';
  return [
    {
      key: 'due',
      code: 'time-mismatch',
      message: `${point.label} shows ${clockOf(at, draft)}, but ${expected.from} at ${clockOf(expected.fromAt, draft)} plus ${what} ${duration(expected.seconds)} gives ${clockOf(expected.at, draft)}. Correct one of the two.`,
    },
  ];
}

/** Timed from the stage's finish, the printed times leave a time for the stage itself, and it must be drivable. */
function checkStageTime(draft: Draft, index: number, at: EpochSeconds): Unplaced[] {
  const point = draft.points[index];
  const stage = timedFrom(draft.points, index);
  if (!point || !stage || stage.at === null || stage.metres === null) return [];
  const stageSeconds = at - (point.allowedSeconds ?? 0) - stage.at;
  if (stageSeconds > 0 && stage.metres * 3600 <= MAX_STAGE_METRES_PER_HOUR * (stageSeconds + 59)) return [];
  return [
    {
      key: 'due',
      code: 'time-mismatch',
      message: `${point.label} at ${clockOf(at, draft)} less target time ${duration(point.allowedSeconds ?? 0)} leaves no time to drive ${stage.label}, which starts at ${clockOf(stage.at, draft)}. Correct one of the times, or have the road timed from the stage's start.`,
    },
  ];
}

function clockOf(at: EpochSeconds, draft: Draft): string {
  const start = draft.points[0]?.at ?? at;
  const first = isInstant(start) ? start : at;
  const clock = formatClock(at, draft.timeZone);
  const day = formatDay(at, draft.timeZone);
  return day === formatDay(first, draft.timeZone) ? clock : `${clock} (${day})`;
}

function duration(seconds: number): string {
  const minutes = Math.floor(Math.abs(seconds) / 60);
  const rest = Math.abs(seconds) % 60;
  const text = `${Math.floor(minutes / 60)}:${String(minutes % 60).padStart(2, '0')}`;
  return `${seconds < 0 ? '-' : ''}${text}${rest === 0 ? '' : `:${String(rest).padStart(2, '0')}`}`;
}
