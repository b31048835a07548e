import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import { ITINERARY, makeAction, taskRef } from '../support/event';
import type { House } from '../support/house';
import type { SpareKeys } from './probe-rows';
import { foundWorld, makeAccount, pushAs, type World } from './world';

/** A world with a row in every table, and the keys that copies of these rows need. */
export interface Seed extends World {
  spareKeys: SpareKeys;
  /** An organiser that has published nothing. */
  silent: { userId: string; organiserId: string };
}

export async function seedWorld(house: House, owner: pg.Client): Promise<Seed> {
  const world = await foundWorld(house);
  const { teamId, entryId, eventId, idleCarId } = world;
  const stage = { entryId, stageId: 'SS1', driven: true, conditions: {} };
  await pushAs(world.owner, world, { kind: 'confirmStage', args: stage });
  const time = { entryId, controlId: 'TC2A', writtenAt: 1_781_340_000, heldMinutes: 3 };
  await pushAs(world.owner, world, { kind: 'recordTime', args: time });
  const finish = {
    entryId,
    controlId: 'SS1',
    finish: true as const,
    writtenAt: 1_781_338_020,
    heldMinutes: 0,
  };
  await pushAs(world.owner, world, { kind: 'recordTime', args: finish });
  const refused = makeAction(
    { kind: 'releaseTask', args: { task: taskRef(entryId, world.signedCardId) } },
    world.owner.personId,
  );
  await world.owner.caller.work.push({ teamId, eventId, actions: [refused] });
  const emptyEventId = randomUUID();
  await owner.query(
    `INSERT INTO event SELECT (jsonb_populate_record(e, jsonb_build_object('id', $1::text))).* FROM event e
     WHERE e.team_id = $2 AND e.id = $3`,
    [emptyEventId, teamId, eventId],
  );
  const file = Buffer.from('picture');
  await owner.query(`INSERT INTO photo VALUES ($1, $2, $3, 14, $4, $4, now())`, [
    teamId,
    randomUUID(),
    eventId,
    file,
  ]);
  await shareWithOrganiser(world, owner);
  await owner.query(`INSERT INTO bring_in VALUES ($1, $2, $3, $4, now(), now(), '{}', '{}', '{}')`, [
    teamId,
    randomUUID(),
    eventId,
    world.owner.personId,
  ]);
  const { draftId } = world.organiser;
  const spareKeys = { emptyEventId, refusedActionId: refused.actionId, draftId, idleCarId };
  return { ...world, spareKeys, silent: await foundSilentOrganiser(house) };
}

async function shareWithOrganiser({ teamId, owner: { caller }, organiser }: World, owner: pg.Client) {
  const { organiserId, publishedEventId } = organiser;
  const { eventId } = await caller.event.takeOver({ teamId, organiserId, publishedEventId });
  await caller.share.choose({ teamId, eventId, choice: 'rows' });
  await owner.query(`INSERT INTO shared_release VALUES ($1, $2, 1, 'totals', '[]', '[]', now())`, [
    organiserId,
    randomUUID(),
  ]);
}

async function foundSilentOrganiser(house: House) {
  const { userId, caller } = makeAccount(house);
  const { organiserId } = await caller.organiser.create({ name: 'Silent club' });
  const draft = { organiserId, publishedEventId: null, name: 'Draft', itinerary: ITINERARY };
  await caller.organiser.saveEvent(draft);
  return { userId, organiserId };
}
