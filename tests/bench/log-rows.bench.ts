import { randomUUID } from 'node:crypto';
import pg from 'pg';
import { fillLog } from './fill-log';
import { medianOf } from './median-of';
import { type Bench, openBench } from './open-bench';

const SIZES = [50_000, 5_000_000];
/** Of the measured team, beside the event it was founded with. */
const EVENTS = 11;
const TASKS_OF_EVENT = 150;
const STARTERS = 80;
const ROUNDS = 15;
/** Until the API's code is compiled and its statements planned, which the first size alone would pay for. */
const WARM_ROUNDS = 15;
const ORGANISER = randomUUID();

/** A season of the measured team: copies of its event, each with work of which one in 20 was out of order. */
async function addSeason(owner: pg.Client, { teamId }: Bench): Promise<void> {
  const copies: [string, string][] = [
    ['event', "'id', md5(n || original.id::text)::uuid, 'starts_on', original.starts_on + n * 7"],
    [
      'itinerary_version',
      "'id', md5(n || original.id::text)::uuid, 'event_id', md5(n || original.event_id::text)::uuid",
    ],
    ['entry', "'id', md5(n || original.id::text)::uuid, 'event_id', md5(n || original.event_id::text)::uuid"],
  ];
  for (const [table, changed] of copies) {
    await owner.query(
      `INSERT INTO ${table} SELECT (jsonb_populate_record(original, jsonb_build_object(${changed}))).*
       FROM ${table} original, generate_series(1, ${EVENTS}) n WHERE original.team_id = $1`,
      [teamId],
    );
  }
  await owner.query(
    `INSERT INTO task (team_id, id, event_id, entry_id, service_id, card_id, state, changed_seq, body)
     SELECT entry.team_id, entry.id || ' ' || n, entry.event_id, entry.id, 'A', card.id, 'done', n,
       jsonb_build_object('findings', CASE WHEN n % 20 = 0
         THEN '[{"grade": "needsWork", "position": null, "lookId": null, "words": ""}]'::jsonb ELSE '[]'::jsonb END)
     FROM entry, generate_series(1, ${TASKS_OF_EVENT}) n,
       LATERAL (SELECT id FROM card WHERE card.team_id = entry.team_id ORDER BY ordinal OFFSET n % 10 LIMIT 1) card
     WHERE entry.team_id = $1`,
    [teamId],
  );
  await owner.query('VACUUM ANALYZE');
}

/** An organiser with a season of events and the list of each, which the account that measures may see. */
async function addOrganiser(owner: pg.Client, { teamId }: Bench): Promise<void> {
  const member = randomUUID();
  const events = `generate_series(1, ${EVENTS}) n`;
  // The contract takes no id whose version and variant are not of an id made by chance.
  const event = `overlay(overlay(md5('${ORGANISER}' || n) placing '4' from 13) placing 'a' from 17)::uuid`;
  const statements = [
    `INSERT INTO organiser (organiser_id, name, created_at) VALUES ('${ORGANISER}', 'Bench', now())`,
    `INSERT INTO organiser_membership (organiser_id, id, user_id, created_at)
     SELECT '${ORGANISER}', '${member}', user_id, now() FROM membership WHERE team_id = '${teamId}' LIMIT 1`,
    `INSERT INTO published_event (organiser_id, id, name, time_zone, starts_on, published_at, created_at)
     SELECT '${ORGANISER}', ${event}, 'Event ' || n, 'Europe/London', '2026-01-01'::date + 7 * n, now(), now() FROM ${events}`,
    `INSERT INTO published_itinerary (organiser_id, id, event_id, number, source, itinerary, saved_at)
     SELECT '${ORGANISER}', gen_random_uuid(), ${event}, 1, source, itinerary, now()
     FROM (SELECT * FROM itinerary_version WHERE team_id = '${teamId}' LIMIT 1) own, ${events}`,
    `INSERT INTO bulletin (organiser_id, id, event_id, number, itinerary_number, note, issued_at)
     SELECT '${ORGANISER}', gen_random_uuid(), ${event}, 0, 1, '', now() FROM ${events}`,
    `INSERT INTO retirement_list (organiser_id, event_id, source, records, saved_by, saved_at)
     SELECT '${ORGANISER}', ${event}, '', (SELECT jsonb_agg(jsonb_build_object('carNumber', car::text, 'className', '',
       'outcome', CASE WHEN car % 4 = 0 THEN 'out' ELSE 'finished' END,
       'stop', CASE WHEN car % 4 = 0 THEN '{"place": {"relation": "after", "pointId": "SS1"}, "cause": "mechanical",
         "part": "gearbox", "source": "crew"}'::jsonb END, 'reached', null, 'backFromSection', null))
       FROM generate_series(1, ${STARTERS}) car), '${member}', now() FROM ${events}`,
  ];
  for (const statement of statements) await owner.query(statement);
}

/** Milliseconds from asking the API to its whole answer; the first rounds are not counted. */
async function ask({ apiUrl, cookie }: Bench, procedure: string, input: object): Promise<number> {
  const url = `${apiUrl}/trpc/${procedure}?input=${encodeURIComponent(JSON.stringify(input))}`;
  const times: number[] = [];
  for (let round = -WARM_ROUNDS; round < ROUNDS; round += 1) {
    const startedAt = performance.now();
    const response = await fetch(url, { headers: { cookie } });
    const answer = await response.text();
    if (!response.ok) throw new Error(`${procedure} was refused: ${answer}`);
    if (round >= 0) times.push(performance.now() - startedAt);
  }
  return medianOf(times);
}

const bench = await openBench({ manyCards: false });
const owner = new pg.Client({ connectionString: bench.urls.ownerUrl });
try {
  await owner.connect();
  const pages = [
    ['what keeps failing, of the manager', 'reliability.ofTeam', { teamId: bench.teamId }],
    [
      'what keeps failing, of the organiser',
      'retirement.figures',
      { organiserId: ORGANISER, className: null },
    ],
  ] as const;
  await addOrganiser(owner, bench);
  let teams = 0;
  const measured: number[][] = [];
  for (const rows of SIZES) {
    teams = await fillLog(owner, bench.teamId, rows, teams);
    if (measured.length === 0) await addSeason(owner, bench);
    const { rows: counted } = await owner.query<{ count: string }>('SELECT count(*) FROM log_entry');
    const times: number[] = [];
    for (const [, procedure, input] of pages) times.push(await ask(bench, procedure, input));
    measured.push(times);
    console.log(
      `  ${counted[0]?.count} log rows, ${teams} other teams: ${times.map((time) => time.toFixed(1)).join(' and ')} ms`,
    );
  }
  console.log(`Beside ${SIZES[0]} log rows at ${SIZES[1]}, median of ${ROUNDS} rounds:`);
  for (const [index, [name]] of pages.entries()) {
    console.log(
      `  ${name}: ${((measured[1]?.[index] ?? 0) / (measured[0]?.[index] ?? 1)).toFixed(2)} times the time`,
    );
  }
} finally {
  await owner.end();
  await bench.close();
}
process.exit();
