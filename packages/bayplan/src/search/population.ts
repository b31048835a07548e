import { at } from '../at';
import { priorities } from '../generate/priorities';
import type { Side } from '../generate/side';
import { criticalTimes } from '../times/critical-times';
import { breed } from './breed';
import type { Chance } from './chance';
import { Members } from './members';

const MEMBERS = 20;
const MOST_RANDOM_STARTS = 100;
const PARALLEL_SHARE_AT_FIRST = 0.5;
const PARALLEL_SHARE = 0.3;
const BLUR = 0.3;
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
  const [forward, backward] = sides.map((side) => ({
    side,
    members: new Members(MEMBERS),
    starts: new Int32Array(side.project.size),
  })) as [Camp, Camp];
  const values = new Float64Array(forward.side.project.size);
  const pairs = [
    { from: forward, to: backward },
    { from: backward, to: forward },
  ];
  for (const rule of FIRST_RULES) {
    for (const { from, to } of pairs) {
      values.set(priorities(from.side.project, rule));
      yield* raise(from, to, values, false);
      yield* raise(from, to, values, true);
    }
  }
  for (let round = 0; round < MOST_RANDOM_STARTS; round += 1) {
    const pair = pairs.find(({ to }) => !to.members.full);
    if (!pair) break;
    blurLatestFinish(pair.from.side, chance, values);
    yield* raise(pair.from, pair.to, values, chance.share() < PARALLEL_SHARE_AT_FIRST);
  }
  for (;;) {
    for (const { from, to } of pairs) {
      breed(from.side.project, from.members.list, chance, values);
      yield* raise(from, to, values, chance.share() < PARALLEL_SHARE);
    }
  }
}

/** A schedule in one direction, then, unless it is old, half a justification, which makes it a member of the other side. */
function* raise(from: Camp, to: Camp, values: Float64Array, parallel: boolean): Generator<Made, void> {
  const { generator, project } = from.side;
  const makespan = parallel
    ? generator.parallelByPriority(values, from.starts)
    : generator.serialByPriority(values, from.starts);
  yield { side: from.side, starts: from.starts, makespan };
  if (from.members.seenBefore(from.starts)) return;
  const justified = to.side.justify(project, from.starts, makespan, to.starts);
  to.members.admit(to.side.project, to.starts, justified);
  yield { side: to.side, starts: to.starts, makespan: justified };
}

function blurLatestFinish({ project }: Side, chance: Chance, values: Float64Array): void {
  const { latestFinish, length } = criticalTimes(project);
  for (let job = 0; job < project.size; job += 1) {
    values[job] = at(latestFinish, job) + chance.share() * BLUR * length;
  }
}
