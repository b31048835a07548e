import { randomUUID } from 'node:crypto';

/** What a copied row needs to stand beside the row it was copied from, where it is not the id alone. */
export interface SpareKeys {
  /** In an event of its own, without a log. */
  emptyEventId: string;
  /** Was refused, so nothing was applied. */
  refusedActionId: string;
  /** An organiser's event without a list of retirements or times. */
  draftId: string;
  /** In no event. */
  idleCarId: string;
}

/** What a probe needs to know of one table. */
export interface TableProbe {
  /** What makes a copy of a row of the same tenant a new row. */
  fresh(spare: SpareKeys): Record<string, unknown>;
  /** A column that the app may change, or null where rows are written once. */
  changes: string | null;
  mayDelete: boolean;
}

const HIGH = 9_999;
/** The version of the published event that has no bulletin yet. */
const UNISSUED = 2;
const byId = () => ({ id: randomUUID() });

function probe(changes: string | null, fresh: TableProbe['fresh'] = byId, mayDelete = false): TableProbe {
  return { changes, fresh, mayDelete };
}

/** Every table of the schema. A table that is missing here fails the test by its name. */
export const TABLE_PROBES: Record<string, TableProbe> = {
  team: probe('name', () => ({ team_id: randomUUID() })),
  person: probe('name'),
  car: probe('name'),
  card: probe('ordinal'),
  event: probe('name'),
  itinerary_version: probe(null, () => ({ id: randomUUID(), number: HIGH })),
  entry: probe('people', ({ idleCarId }) => ({ id: randomUUID(), car_id: idleCarId, start_position: HIGH })),
  membership: probe('role', () => ({ id: randomUUID(), user_id: randomUUID() })),
  invite: probe('expires_at', () => ({ id: randomUUID(), token_hash: randomUUID() })),
  log_head: probe('last_seq', ({ emptyEventId }) => ({ event_id: emptyEventId })),
  action: probe(null),
  log_entry: probe(null, () => ({ seq: HIGH })),
  snag: probe('body'),
  task: probe('state'),
  stage_run: probe('body', byId, true),
  control_time: probe('body', byId, true),
  car_fact: probe('body'),
  photo: probe(null, byId, true),
  bring_in: probe(null),
  applied_action: probe('body', ({ refusedActionId }) => ({ id: refusedActionId })),
  share: probe('level', ({ emptyEventId }) => ({ id: randomUUID(), event_id: emptyEventId })),
  organiser: probe('name', () => ({ organiser_id: randomUUID() })),
  organiser_membership: probe('user_id', () => ({ id: randomUUID(), user_id: randomUUID() })),
  published_event: probe('name'),
  bulletin: probe(null, () => ({ id: randomUUID(), number: HIGH, itinerary_number: UNISSUED })),
  start_list: probe(null, () => ({ id: randomUUID(), number: HIGH })),
  shared_record: probe('level', byId, true),
  shared_release: probe(null, () => ({ id: randomUUID(), number: HIGH })),
  retirement_list: probe('source', ({ draftId }) => ({ event_id: draftId })),
  time_list: probe('source', ({ draftId }) => ({ event_id: draftId })),
  published_itinerary: probe(null, () => ({ id: randomUUID(), number: HIGH })),
};
