import type pg from 'pg';

/** Rows of one team beside the measured one: as many of each as a team keeps of a long event. */
const LOG_ROWS_OF_TEAM = 10_000;
const TASKS_OF_TEAM = 1_000;
const FACTS_OF_TEAM = 200;
/** A transaction of this many teams, so that no single statement runs for minutes. */
const TEAMS_AT_ONCE = 25;

/** The id of the copy of a row for a team by its number: made of both, so that every table agrees on it. */
const COPY = (id: string) => `md5(team_number || ${id}::text)::uuid`;

/** Rows with an id in each of these columns belong to the copy. */
const COPIED: readonly (readonly [string, readonly string[]])[] = [
  ['team', []],
  ['person', ['id']],
  ['car', ['id']],
  ['card', ['id', 'car_id']],
  ['event', ['id']],
  ['itinerary_version', ['id', 'event_id', 'saved_by']],
  ['entry', ['id', 'event_id', 'car_id']],
  ['log_head', ['event_id']],
];

/**
 * Fills the database to so many log rows with other teams, copies of the given one with work of their own, and gathers
 * what the planner knows of the tables. `from` and the answer: how many other teams there are.
 */
export async function fillLog(owner: pg.Client, teamId: string, rows: number, from: number): Promise<number> {
  const teams = Math.ceil(rows / LOG_ROWS_OF_TEAM);
  // What the copies refer to is copied before: millions of look-ups of it would only measure the filling.
  await owner.query('SET session_replication_role = replica');
  for (let first = from + 1; first <= teams; first += TEAMS_AT_ONCE) {
    const last = Math.min(teams, first + TEAMS_AT_ONCE - 1);
    for (const [table, ids] of COPIED) await copyRows(owner, table, ids, [teamId, first, last]);
    for (const statement of [LOG, TASKS, FACTS]) await owner.query(statement, [teamId, first, last]);
  }
  await owner.query('SET session_replication_role = origin');
  await owner.query('VACUUM ANALYZE');
  return teams;
}

/** All rows of the team's first event and what it needs, as they are but for the ids. */
async function copyRows(
  owner: pg.Client,
  table: string,
  ids: readonly string[],
  values: [string, number, number],
): Promise<void> {
  const changed = ids.map((column) => `, '${column}', ${COPY(`original.${column}`)}`).join('');
  await owner.query(
    `INSERT INTO ${table} SELECT (jsonb_populate_record(original,
       jsonb_build_object('team_id', ${COPY('original.team_id')}${changed}))).*
     FROM ${table} original, generate_series($2::int, $3::int) team_number WHERE original.team_id = $1::uuid`,
    values,
  );
}

/** One entry of each copied team, with its card and person. */
const OTHERS = `FROM generate_series($2::int, $3::int) team_number,
  (SELECT entry.*, (SELECT id FROM person WHERE person.team_id = entry.team_id LIMIT 1) AS person_id,
     (SELECT array_agg(id) FROM card WHERE card.team_id = entry.team_id) AS card_ids
   FROM entry WHERE entry.team_id = $1::uuid ORDER BY created_at, id LIMIT 1) original`;
const TEAM = COPY('original.team_id');

const LOG = `INSERT INTO log_entry (team_id, event_id, seq, action_id, kind, by_person, entered_by, device_id, device_time, server_time, flags, body)
  SELECT ${TEAM}, ${COPY('original.event_id')}, seq, md5(team_number || 'action' || seq)::uuid, 'closed',
    ${COPY('original.person_id')}, ${COPY('original.person_id')}, 'phone', seq, seq, '[]',
    jsonb_build_object('taskId', 'task ' || seq, 'findings', '[]'::jsonb, 'readings', '[]'::jsonb)
  ${OTHERS}, generate_series(1, ${LOG_ROWS_OF_TEAM}) seq`;

const TASKS = `INSERT INTO task (team_id, id, event_id, entry_id, service_id, card_id, state, changed_seq, body)
  SELECT ${TEAM}, 'task ' || seq, ${COPY('original.event_id')}, ${COPY('original.id')}, 'A',
    ${COPY('original.card_ids[1 + seq % cardinality(original.card_ids)]')}, 'done', seq,
    jsonb_build_object('findings', CASE WHEN seq % 40 = 0
      THEN '[{"grade": "needsWork", "position": null, "lookId": null, "words": ""}]'::jsonb ELSE '[]'::jsonb END)
  ${OTHERS}, generate_series(1, ${TASKS_OF_TEAM}) seq`;

const FACTS = `INSERT INTO car_fact (team_id, id, event_id, entry_id, body)
  SELECT ${TEAM}, md5(team_number || 'fact' || seq)::uuid, ${COPY('original.event_id')}, ${COPY('original.id')},
    jsonb_build_object('withdrawn', false, 'changedSeq', seq, 'at', '{"kind": "service", "serviceId": "A"}'::jsonb,
      'fact', CASE WHEN seq % 10 = 0 THEN '{"kind": "out", "forDay": false, "cause": null, "cardId": null, "words": ""}'::jsonb
        ELSE '{"kind": "tyres"}'::jsonb END)
  ${OTHERS}, generate_series(1, ${FACTS_OF_TEAM}) seq`;
