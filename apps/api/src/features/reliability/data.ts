import type { CarRow } from '@halfshaft/contract';
import type { EpochSeconds, Itinerary } from '@halfshaft/itinerary';
import type { Counters, JobCard } from '@halfshaft/lifing';
import type { TeamTx } from '@halfshaft/store';
import type { LoggedEvent } from '@halfshaft/worklog';
import { toCar } from '../car/data';
import { toCard } from '../card/data';

export interface EventOfLives {
  eventId: string;
  name: string;
  /** `YYYY-MM-DD`. */
  startsOn: string;
  clockOffsetSeconds: EpochSeconds;
  itinerary: Itinerary;
}

/** What the log has of one car at one event, of the cards of which something failed. */
export interface EntryOfLives extends Pick<LoggedEvent, 'stages' | 'times' | 'workedAt' | 'done' | 'facts'> {
  eventId: string;
  carId: string;
  carried: Record<string, Partial<Counters>>;
}

/** A card of which something failed. */
export interface FailingCard {
  carId: string;
  removed: boolean;
  card: JobCard;
}

/** The events of the team with their newest itinerary, in the order driven. */
export async function listEventsOfLives({ db, teamId }: TeamTx): Promise<EventOfLives[]> {
  return db.$queryRaw<EventOfLives[]>`
    SELECT event.id AS "eventId", event.name, to_char(event.starts_on, 'YYYY-MM-DD') AS "startsOn",
      event.clock_offset_seconds AS "clockOffsetSeconds", newest.itinerary
    FROM event JOIN LATERAL (SELECT itinerary FROM itinerary_version
      WHERE team_id = ${teamId}::uuid AND event_id = event.id ORDER BY number DESC LIMIT 1) newest ON true
    WHERE event.team_id = ${teamId}::uuid
    ORDER BY event.starts_on, event.created_at, event.id`;
}

/**
 * Every car at every event. Which cards something failed on is found first, and only their work is gathered: rows of the
 * log are never read, nor what was looked at and was in order for years. The kinds of facts are those of `LIFE_FACT_KINDS`,
 * written out since only a condition in the same words finds the index.
 */
export async function listEntriesOfLives({ db, teamId }: TeamTx): Promise<EntryOfLives[]> {
  return db.$queryRaw<EntryOfLives[]>`
    WITH told AS MATERIALIZED (
      SELECT entry_id, body FROM car_fact WHERE team_id = ${teamId}::uuid AND NOT (body->>'withdrawn')::boolean
        AND body->'fact'->>'kind' IN ('incident', 'fitted', 'modified', 'madeGood', 'prepared', 'out', 'restarted')
    ), failing AS MATERIALIZED (
      SELECT card_id FROM task WHERE team_id = ${teamId}::uuid AND state = 'done' AND card_id IS NOT NULL
        AND (body->'findings' @> '[{"grade": "needsWork"}]' OR body->'findings' @> '[{"grade": "temporaryRepair"}]')
      UNION SELECT (body->'fact'->>'brokenCardId')::uuid FROM told
      UNION SELECT (body->'fact'->>'cardId')::uuid FROM told WHERE body->'fact'->>'kind' = 'out'
      UNION SELECT (body->'fact'->>'cardId')::uuid FROM told WHERE body->'fact'->>'because' IN ('wornOut', 'broke')
    ), worked AS (
      SELECT entry_id, jsonb_agg(DISTINCT service_id) AS services FROM task
      WHERE team_id = ${teamId}::uuid AND state = 'done' GROUP BY entry_id
    ), closed AS (
      SELECT entry_id, jsonb_agg(jsonb_build_object('serviceId', service_id, 'cardId', card_id,
        'findings', body->'findings') ORDER BY id) AS cards FROM task
      WHERE team_id = ${teamId}::uuid AND state = 'done' AND card_id IN (SELECT card_id FROM failing) GROUP BY entry_id
    ), facts AS (
      SELECT entry_id, jsonb_agg(body ORDER BY (body->>'changedSeq')::int) AS bodies FROM told GROUP BY entry_id
    ), driven AS (
      SELECT entry_id, jsonb_agg(jsonb_build_object('stageId', body->'stageId', 'driven', body->'driven')) AS stages
      FROM stage_run WHERE team_id = ${teamId}::uuid GROUP BY entry_id
    ), timed AS (
      SELECT entry_id, jsonb_agg(jsonb_build_object('controlId', body->'controlId', 'finish', body->'finish')) AS times
      FROM control_time WHERE team_id = ${teamId}::uuid GROUP BY entry_id
    )
    SELECT entry.event_id AS "eventId", entry.car_id AS "carId", entry.carried,
      coalesce(driven.stages, '[]') AS stages, coalesce(timed.times, '[]') AS times,
      coalesce(worked.services, '[]') AS "workedAt", coalesce(closed.cards, '[]') AS done,
      coalesce(facts.bodies, '[]') AS facts
    FROM entry LEFT JOIN driven ON driven.entry_id = entry.id LEFT JOIN timed ON timed.entry_id = entry.id
      LEFT JOIN worked ON worked.entry_id = entry.id LEFT JOIN closed ON closed.entry_id = entry.id
      LEFT JOIN facts ON facts.entry_id = entry.id
    WHERE entry.team_id = ${teamId}::uuid`;
}

export async function findCards({ db, teamId }: TeamTx, cardIds: string[]): Promise<FailingCard[]> {
  const rows = await db.card.findMany({
    where: { teamId, id: { in: cardIds } },
    orderBy: { ordinal: 'asc' },
  });
  return rows.map((row) => ({ carId: row.carId, removed: row.removedAt !== null, card: toCard(row) }));
}

/** Every car with how many cards it has in use. */
export async function listCarsWithCards({ db, teamId }: TeamTx): Promise<{ car: CarRow; cards: number }[]> {
  const rows = await db.car.findMany({
    where: { teamId },
    orderBy: { createdAt: 'asc' },
    include: { _count: { select: { cards: { where: { removedAt: null } } } } },
  });
  return rows.map((row) => ({ car: toCar(row), cards: row._count.cards }));
}

/** Snags that stand, counted by car and place. */
export async function countSnags({
  db,
  teamId,
}: TeamTx): Promise<{ carId: string; place: string; times: number }[]> {
  return db.$queryRaw`
    SELECT entry.car_id AS "carId", snag.body->>'place' AS place, count(*)::int AS times
    FROM snag JOIN entry ON entry.team_id = snag.team_id AND entry.id = snag.entry_id
    WHERE snag.team_id = ${teamId}::uuid AND NOT (snag.body->>'withdrawn')::boolean
    GROUP BY 1, 2 ORDER BY 3 DESC, 2`;
}
