import type pg from 'pg';
import { type FenceValues, setFence, tryOut } from './fenced-session';
import { hashToken } from './hash-token';
import type { Seed } from './seed';

/**
 * Tables that show some rows without a tenant's setting: to the account they belong to, to the holder of a link, to every
 * account once published. Each probe says what must be seen, and that nothing more is, and that seeing is not changing.
 */
export const SELECT_PROBES: Record<
  string,
  (app: pg.Client, seeds: { mine: Seed; others: Seed }) => Promise<string[]>
> = {
  team: (app, { mine }) => sees(app, 'team', 'team_id', { user: mine.mechanic.userId }, [mine.teamId]),

  membership: (app, { mine }) =>
    sees(app, 'membership', 'person_id', { user: mine.mechanic.userId }, [mine.mechanic.personId]),

  invite: (app, { mine }) => sees(app, 'invite', 'id', { invite: hashToken(mine.token) }, [mine.inviteId]),

  organiser_membership: (app, { mine }) =>
    sees(app, 'organiser_membership', 'organiser_id', { user: mine.silent.userId }, [
      mine.silent.organiserId,
    ]),

  organiser: async (app, { mine, others }) => {
    const published = [mine.organiser.organiserId, others.organiser.organiserId];
    const own = { user: mine.silent.userId };
    return [
      ...(await sees(app, 'organiser', 'organiser_id', { user: 'a stranger' }, published)),
      ...(await sees(app, 'organiser', 'organiser_id', own, [...published, mine.silent.organiserId])),
    ];
  },

  published_event: (app, { mine, others }) =>
    sees(app, 'published_event', 'id', { user: 'a stranger' }, publishedOf(mine, others)),

  bulletin: (app, { mine, others }) =>
    sees(app, 'bulletin', 'event_id', { user: 'a stranger' }, publishedOf(mine, others)),

  start_list: (app, { mine, others }) =>
    sees(app, 'start_list', 'event_id', { user: 'a stranger' }, publishedOf(mine, others)),

  published_itinerary: (app, { mine, others }) =>
    sees(app, 'published_itinerary', 'event_id', { user: 'a stranger' }, publishedOf(mine, others)),
};

function publishedOf(...seeds: Seed[]): string[] {
  return seeds.map((seed) => seed.organiser.publishedEventId);
}

/** Exactly these rows are seen under this fence, and none of them can be changed. */
async function sees(
  app: pg.Client,
  table: string,
  column: string,
  fence: FenceValues,
  wanted: string[],
): Promise<string[]> {
  await setFence(app, fence);
  const seen = await tryOut(app, `SELECT ${column} AS id FROM ${table}`);
  const changed = await tryOut(app, `UPDATE ${table} SET ${column} = ${column}`);
  const under = Object.keys(fence).join();
  const ids = seen.ok ? seen.rows.map((row) => String(row.id)) : [];
  return [
    ...(ids.sort().join() === [...wanted].sort().join()
      ? []
      : [`not the right rows are seen by ${under} alone`]),
    ...(changed.ok && changed.count > 0 ? [`rows can be changed by ${under} alone`] : []),
  ];
}
