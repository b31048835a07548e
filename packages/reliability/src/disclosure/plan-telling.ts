import { mayRelease } from './may-release';
import { poolEvents } from './pool-events';
import type { Release, SharedPart } from './shared-part';

/** `totals`: sums only. `rows`: each car may be listed without a name, too. */
export type ShareLevel = 'totals' | 'rows';

/** A copy of what a team shares of one event, `content` its id. Those it replaced are kept; the newest of an event counts. */
export interface SharedCopy extends SharedPart {
  readonly level: ShareLevel;
  /** Any clock, later is newer. */
  readonly sharedAt: number;
}

/** Told once, of a pool of events. */
export interface ToldRelease {
  readonly kind: ShareLevel;
  readonly events: readonly string[];
  readonly parts: Release;
}

export interface PoolTold {
  readonly events: readonly string[];
  /** The copies that sums are told of, and those that rows are told of; null where nothing is. */
  readonly totals: Release | null;
  readonly rows: Release | null;
}

export interface TellingPlan {
  readonly pools: readonly PoolTold[];
  /** To be kept before anything of it is shown. */
  readonly added: readonly ToldRelease[];
}

/**
 * What an organiser may be told now, pool by pool of events, by the rules of `poolEvents` and `mayRelease`. Sums and rows are
 * told beside each other, so each counts as told to the other: taking the rows from the sums must not leave fewer than five
 * teams either.
 *
 * `events` in the order in which they were held; `told` all there ever was, oldest first.
 */
export function planTelling(
  copies: readonly SharedCopy[],
  told: readonly ToldRelease[],
  events: readonly string[],
): TellingPlan {
  const newest = newestOf(copies);
  const pools = poolEvents(poolsOf(told), events, newest);
  const plans = pools.map((pool) => planPool(pool, copies, newest, told));
  return { pools: plans.map(({ pool }) => pool), added: plans.flatMap(({ added }) => added) };
}

function planPool(
  events: readonly string[],
  copies: readonly SharedCopy[],
  newest: readonly SharedCopy[],
  told: readonly ToldRelease[],
): { pool: PoolTold; added: ToldRelease[] } {
  const inside = new Set(events);
  const now = newest.filter(({ event }) => inside.has(event));
  const own = told.filter((release) => release.events.some((event) => inside.has(event)));
  const totals = tell('totals', now, own, copies);
  const toldNow = totals?.isNew ? [...own, { kind: 'totals' as const, events, parts: totals.parts }] : own;
  const openly = copies.filter(({ level }) => level === 'rows');
  const rows = tell(
    'rows',
    now.filter(({ level }) => level === 'rows'),
    toldNow,
    openly,
  );
  const added = toldNow.slice(own.length);
  if (rows?.isNew) added.push({ kind: 'rows', events, parts: rows.parts });
  return { pool: { events, totals: totals?.parts ?? null, rows: rows?.parts ?? null }, added };
}

/** `there`: the copies that may still be told of. */
function tell(
  kind: ShareLevel,
  now: readonly SharedPart[],
  told: readonly ToldRelease[],
  there: readonly SharedCopy[],
): { parts: Release; isNew: boolean } | null {
  const last = told.findLast((release) => release.kind === kind)?.parts ?? null;
  const decision = mayRelease(
    now,
    told.map(({ parts }) => parts),
    last,
  );
  if (decision === 'anew') return { parts: now.map(partOf), isNew: true };
  if (!last || decision === 'withhold') return null;
  const contents = new Set(there.map(({ content }) => content));
  return last.every(({ content }) => contents.has(content)) ? { parts: last, isNew: false } : null;
}

function partOf({ team, event, content }: SharedPart): SharedPart {
  return { team, event, content };
}

function newestOf(copies: readonly SharedCopy[]): SharedCopy[] {
  const byPlace = new Map<string, SharedCopy>();
  for (const copy of copies) {
    const place = JSON.stringify([copy.team, copy.event]);
    const known = byPlace.get(place);
    if (!known || copy.sharedAt > known.sharedAt) byPlace.set(place, copy);
  }
  return [...byPlace.values()];
}

function poolsOf(told: readonly ToldRelease[]): (readonly string[])[] {
  return [...new Map(told.map(({ events }) => [JSON.stringify(events), events])).values()];
}
