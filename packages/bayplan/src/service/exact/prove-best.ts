import type { Engine } from '../../exact/engine';
import { read } from '../../exact/int-list';
import { isOpen } from '../../exact/involvement';
import { Learner } from '../../exact/learner';
import { Chance } from '../../search/chance';
import { compareObjectives, LEVELS, type Level, type Objective } from '../bay-plan';
import { boundFinish } from '../bounds/bound-finish';
import { boundValue } from '../bounds/bound-value';
import type { CompiledService } from '../compile-service';
import { type Decided, judgeWork, type Solution } from '../judge-work';
import { type Encoding, encodeService } from './encode-service';
import type { Linear } from './linear';
import { Rounds } from './rounds';
import { hintsOf, ServiceChooser } from './service-chooser';

const CLAUSES_KEPT = 4000;
/** More than anything sums up to, and small enough for the engine's whole numbers. */
const NO_LIMIT = 1_000_000_000;

/** The best plan known, which others may better between two descents, and what is known of the best there can be. */
export interface ServiceIncumbent {
  best: Solution | undefined;
  /** Level by level, as far as the search has come, what no plan can better (given the best of the levels before). */
  bound: Partial<Objective>;
}

/** `closed`: the incumbent is the best there is, or there is no plan. */
export type ServiceDescent = 'nothing' | 'better' | 'closed';

/**
 * An exact search for the best plan, level by level: while there may be something better on a level, look for it; then
 * hold that level and go on to the next. Concludes and learns like {@link proveShortest}, with the same engine; in many
 * rounds only near the incumbent (see {@link Rounds}). A descent gives each task a start at most once, so it counts as one
 * schedule.
 */
export function* proveBest(
  service: CompiledService,
  incumbent: ServiceIncumbent,
  chance = new Chance(0),
): Generator<ServiceDescent> {
  for (const level of LEVELS) {
    yield* proveLevel(service, incumbent, level, chance);
    if (!incumbent.best) break;
    incumbent.bound[level] = incumbent.best.objective[level];
  }
  yield 'closed';
}

/** Until nothing is better on this level than the incumbent, with the levels before it as good. */
function* proveLevel(
  service: CompiledService,
  incumbent: ServiceIncumbent,
  level: Level,
  chance: Chance,
): Generator<'nothing' | 'better'> {
  const least = leastCost(service, incumbent, level);
  if (incumbent.best && costOf(incumbent.best, level) <= least) return;
  const encoding = encodeService(service);
  const sum = limitLevels(encoding, incumbent.best, level);
  const engine = encoding.draft.open();
  if (!engine) return;
  const chooser = new ServiceChooser(encoding, engine);
  const learner = new Learner(engine, (slot) => chooser.involvement.touch(slot));
  const hints = new Int32Array(encoding.draft.size);
  const rounds = new Rounds(service, encoding, chance);
  let known: Solution | undefined;
  for (;;) {
    const { held, descents, byWeight } = rounds.next(incumbent.best);
    let outcome: Outcome = 'clash';
    for (let left = descents; left > 0 && outcome !== 'heldAgainst'; left -= 1) {
      if (incumbent.best && incumbent.best !== known) {
        known = incumbent.best;
        if (costOf(known, level) <= least) return;
        hintsOf(encoding, known, hints);
        engine.backTo(0);
        sum.lower(costOf(known, level) - 1);
      }
      outcome = descend(engine, chooser, held, hints, byWeight(left));
      if (outcome === 'found') keepBetter(service, encoding, engine, incumbent);
      if (outcome === 'clash' && !learner.learn()) return;
      chooser.involvement.fade();
      yield outcome === 'found' ? 'better' : 'nothing';
    }
    rounds.end(outcome === 'heldAgainst');
    engine.backTo(0);
    if (!engine.propagate()) return;
    noteBound(incumbent, level, Math.max(least, sum.leastSum(engine.trail)));
    engine.settle();
    engine.clauses.thin(CLAUSES_KEPT);
  }
}

/** The levels before hold what the best plan has; this one is to be lowered. */
function limitLevels({ draft, sums }: Encoding, best: Solution | undefined, level: Level): Linear {
  for (const before of LEVELS.slice(0, LEVELS.indexOf(level))) {
    if (best) draft.sumAtMost(sums[before], costOf(best, before));
  }
  return draft.sumAtMost(sums[level], best ? costOf(best, level) : NO_LIMIT);
}

function costOf({ objective }: Solution, level: Level): number {
  return level === 'value' ? -objective.value : objective[level];
}

/** Known before the search: no plan costs less on this level, with the levels before it as they are. */
function leastCost(service: CompiledService, { best }: ServiceIncumbent, level: Level): number {
  if (level === 'late') return 0;
  if (level === 'value' && best?.objective.late === 0) return -boundValue(service);
  if (level === 'finish' && best) return boundFinish(service, best.objective.value);
  return Number.NEGATIVE_INFINITY;
}

function noteBound({ best, bound }: ServiceIncumbent, level: Level, least: number): void {
  const cost = best ? Math.min(costOf(best, level), least) : least;
  bound[level] = level === 'value' ? -cost : cost;
}

/** `heldAgainst`: nothing that holds what is held is better. */
type Outcome = 'found' | 'clash' | 'heldAgainst';

function descend(
  engine: Engine,
  chooser: ServiceChooser,
  held: readonly number[],
  hints: Int32Array,
  byWeight: boolean,
): Outcome {
  const { values } = engine.trail;
  let next = 0;
  while (engine.propagate()) {
    while (next < held.length && read(values, 2 * (held[next] ?? 0)) >= 1) next += 1;
    const flag = held[next];
    if (flag === undefined) {
      if (!chooser.decide(engine, hints, byWeight)) return 'found';
    } else if (isOpen(values, flag)) engine.decide(2 * flag, 1);
    else return 'heldAgainst';
  }
  return 'clash';
}

function keepBetter(
  service: CompiledService,
  encoding: Encoding,
  engine: Engine,
  incumbent: ServiceIncumbent,
): void {
  const found = judgeWork(service, readPlan(encoding, engine));
  if (!incumbent.best || compareObjectives(found.objective, incumbent.best.objective) < 0)
    incumbent.best = found;
}

function readPlan({ tasks }: Encoding, { trail: { values } }: Engine): Decided[] {
  const isUp = (flag: number) => read(values, 2 * flag) >= 1;
  return tasks.map(({ start, ways }) => {
    const way = ways.findIndex(({ taken }) => isUp(taken));
    if (way < 0) return undefined;
    const people = (ways[way]?.crews ?? []).map((crew) =>
      [...crew].filter(([, flag]) => isUp(flag)).map(([person]) => person),
    );
    return { way, start: read(values, 2 * start), people };
  });
}
