import { at } from '../at';
import { priorities } from '../generate/priorities';
import type { Side } from '../generate/side';
import { criticalTimes } from '../times/critical-times';
import { breed } from './breed';
import type { Chance } from './chance';
import { Members } from './members';

const MOST_RANDOM_STARTS = 100;
const PARALLEL_SHARE_AT_FIRST = 0.5;
const PARALLEL_SHARE = 0.4;
const BLUR = 0.3;
/** A child longer than the best by more than this is not worth another schedule. */
const HOPELESS = 1.06;
const FIRST_RULES = [
  'latestFinish',
  'latestStart',
  'leastSlack',
  'rankPositionalWeight',
  'mostFollowers',
] as const;

/** A schedule that has just been made: `starts` hold it until the next one is asked for. */
export interface Made {
  side: Side;
  starts: Int32Array;
  makespan: number;
}

/** One side with the schedules that are pushed towards its beginning. */
interface Camp {
  side: Side;
  members: Members;
  starts: Int32Array;
}

/**
 * The population search, schedule by schedule, without an end; {@link openSearch} says how it works. Stops nowhere by
 * itself, so that where its caller pauses makes no difference to what comes next.
 */
export function* breedSchedules(sides: readonly [Side, Side], chance: Chance): Generator<Made, never> {
  const forward = openCamp(sides[0]);
  const backward = openCamp(sides[1]);
  const values = new Float64Array(forward.side.project.size);
  const ways: readonly Way[] = [
    { from: forward, to: backward },
    { from: backward, to: forward },
  ];
  let best = yield* raiseFirst(ways, values, chance);
  for (;;) {
    for (const way of ways) {
      breed(way.from.side.project, way.from.members.list, chance, values);
      best = Math.min(best, yield* raise(way, values, chance.share() < PARALLEL_SHARE, best));
    }
  }
}

interface Way {
  from: Camp;
  to: Camp;
}

function openCamp(side: Side): Camp {
  return { side, members: new Members(), starts: new Int32Array(side.project.size) };
}

/** By priority rules, then by blurred ones until both camps are full. Returns the shortest makespan. */
function* raiseFirst(ways: readonly Way[], values: Float64Array, chance: Chance): Generator<Made, number> {
  let best = Number.POSITIVE_INFINITY;
  for (const rule of FIRST_RULES) {
    for (const way of ways) {
      values.set(priorities(way.from.side.project, rule));
      best = Math.min(best, yield* raise(way, values, false));
      best = Math.min(best, yield* raise(way, values, true));
    }
  }
  for (let round = 0; round < MOST_RANDOM_STARTS; round += 1) {
    const way = ways.find(({ to }) => !to.members.full);
    if (!way) break;
    blurLatestFinish(way.from.side, chance, values);
    best = Math.min(best, yield* raise(way, values, chance.share() < PARALLEL_SHARE_AT_FIRST));
  }
  return best;
}

/**
 * A schedule in one direction, then, unless it is old or hopeless, half a justification, which may make it a member of
 * the other side. Returns the shortest makespan it made.
 */
function* raise(
  { from, to }: Way,
  values: Float64Array,
  parallel: boolean,
  best = Number.POSITIVE_INFINITY,
): Generator<Made, number> {
  const { generator, project } = from.side;
  const makespan = parallel
    ? generator.parallelByPriority(values, from.starts)
    : generator.serialByPriority(values, from.starts);
  yield { side: from.side, starts: from.starts, makespan };
  if (makespan > HOPELESS * best || from.members.seenBefore(from.starts)) return makespan;
  const justified = to.side.justify(project, from.starts, makespan, to.starts);
  to.members.admit(to.starts, justified);
  yield { side: to.side, starts: to.starts, makespan: justified };
  return justified;
}

function blurLatestFinish({ project }: Side, chance: Chance, values: Float64Array): void {
  const { latestFinish, length } = criticalTimes(project);
  for (let job = 0; job < project.size; job += 1) {
    values[job] = at(latestFinish, job) + chance.share() * BLUR * length;
  }
}
