import { randomUUID } from 'node:crypto';
import { appRouter } from '@halfshaft/api/router';
import { actionArgs } from '@halfshaft/contract';
import { afterAll, afterEach, beforeAll, describe, expect, it } from 'vitest';
import { ask, refusalIn, withoutEcho } from './answer';
import type { Variant } from './fixture';
import { FIXTURES } from './fixtures';
import { hashToken } from './hash-token';
import { idPathsOf, replaceAt } from './id-paths';
import { type Fence, openFence } from './open-fence';
import { changedPlaces, readState } from './table-state';
import { foundWorld, makeAccount, type World } from './world';

const PROCEDURES = appRouter._def.procedures as unknown as Record<string, { _def: { inputs: unknown[] } }>;

let fence: Fence;
/** The others: a team and an organiser that nothing here may see or touch. */
let others: World;

beforeAll(async () => {
  fence = await openFence();
  others = await foundWorld(fence.house);
});
afterEach(() => fence.keepOnly([others]));
afterAll(() => fence?.close());

/** What stands for each id field when another tenant's id is put there. By the field's own name. */
const OTHERS_ID: Record<string, (world: World) => string> = {
  teamId: (world) => world.teamId,
  by: (world) => world.mechanic.personId,
  personIds: (world) => world.mechanic.personId,
  enteredBy: (world) => world.mechanic.personId,
  carId: (world) => world.carId,
  cardId: (world) => world.cardId,
  cardIds: (world) => world.cardId,
  brokenCardId: (world) => world.cardId,
  eventId: (world) => world.eventId,
  entryId: (world) => world.entryId,
  inviteId: (world) => world.inviteId,
  membershipId: (world) => world.spare.membershipId,
  organiserId: (world) => world.organiser.organiserId,
  publishedEventId: (world) => world.organiser.publishedEventId,
  snagId: (world) => world.snagId,
  factId: (world) => world.factId,
  actionId: (world) => world.actionId,
};

/** The same, of what the other organiser has not published. */
const DRAFT_ID: typeof OTHERS_ID = { publishedEventId: (world) => world.organiser.draftId };

describe('the table of procedures', () => {
  it('has a fixture for every procedure and a procedure for every fixture', () => {
    const withFixture = [...new Set(FIXTURES.map((each) => each.path))];
    expect(withFixture.sort()).toEqual(Object.keys(PROCEDURES).sort());
  });

  it('tries every id that any procedure asks for', async () => {
    const tried = new Set<string>();
    const wanted = new Set<string>();
    const world = await foundWorld(fence.house);
    for (const variant of FIXTURES) {
      const input = await variant.make(world);
      for (const path of schemaIds(variant)) {
        wanted.add(`${variant.path} ${path}`);
        if (standsAt(input, path)) tried.add(`${variant.path} ${path}`);
      }
    }
    expect([...wanted].filter((each) => !tried.has(each))).toEqual([]);
    expect(tried.size).toBeGreaterThan(40);
  });
});

describe.each(FIXTURES)('$name', (variant) => {
  it('works for its owner, and tells nobody of an id of others more than of one that never existed', async () => {
    const world = await foundWorld(fence.house);
    const fresh = await variant.make(world);
    for (const path of presentIds(variant, fresh)) {
      if (variant.made.includes(path)) continue;
      for (const id of othersIdsAt(path)) await expectNoDifference(world, variant, fresh, { path, id });
    }
    expect(refusalIn(await callAs(world, variant, fresh))).toBeNull();
  });
});

describe.each(FIXTURES.filter((each) => each.made.length > 0))('$name', (variant) => {
  it('lets a client make up an id that others have used', async () => {
    for (const path of variant.made) {
      const [othersId] = othersIdsAt(path);
      const taken = await pushWith(variant, path, othersId);
      const unheard = await pushWith(variant, path, randomUUID());
      expect(refusalIn(taken.answer)).toBeNull();
      expect(taken.answer).toEqual(unheard.answer);
      expect(taken.places).toEqual(unheard.places);
      expect(taken.places.filter((place) => !place.endsWith(' of mine'))).toEqual([]);
    }
  });
});

describe.each(FIXTURES.filter((each) => each.secrets.length > 0))('$name', (variant) => {
  it('takes no id and no hash for the secret of a link', async () => {
    const world = await foundWorld(fence.house);
    const input = await variant.make(world);
    for (const path of variant.secrets) {
      await expectNoDifference(world, variant, input, { path, id: others.inviteId });
      await expectNoDifference(world, variant, input, { path, id: hashToken(others.token) });
    }
  });
});

/** Another tenant's id, then one that never existed: the same answer, a refusal, and no row changed by either. */
async function expectNoDifference(
  world: World,
  variant: Variant,
  input: unknown,
  { path, id }: { path: string; id: string | undefined },
): Promise<void> {
  const answers = [];
  for (const value of [id, randomUUID()]) {
    const actionId = variant.path === 'work.push' ? randomUUID() : null;
    const swapped = replaceAt(input, path, value);
    const sent = actionId ? replaceAt(swapped, 'actions.0.actionId', actionId) : swapped;
    const before = await readState(fence.owner);
    const answer = await callAs(world, variant, sent);
    // A refused action is remembered: the one row in `action`, of the caller's team, under the pushed id. Nothing else.
    const remembered = await tenantOfAction(actionId);
    expect([null, world.teamId]).toContain(remembered);
    expect(changedPlaces(before, await readState(fence.owner, actionId)), `${path} changed rows`).toEqual([]);
    expect(refusalIn(answer), `${path} was taken`).not.toBeNull();
    expect(answer.ok || answer.code, `${path} broke the server`).not.toBe('INTERNAL_SERVER_ERROR');
    answers.push({ answer: withoutEcho(answer), remembered: remembered !== null });
  }
  expect(answers[0], path).toEqual(answers[1]);
}

async function tenantOfAction(actionId: string | null): Promise<string | null> {
  const { rows } = await fence.owner.query<{ team_id: string; status: string }>(
    `SELECT team_id, outcome->>'status' AS status FROM action WHERE id = $1`,
    [actionId],
  );
  expect(rows.length).toBeLessThanOrEqual(1);
  if (rows[0]) expect(rows[0].status).toBe('refused');
  return rows[0]?.team_id ?? null;
}

/** In a world of its own: the answer, and which tables changed for whom. */
async function pushWith(variant: Variant, path: string, id: string | undefined) {
  const world = await foundWorld(fence.house);
  const input = replaceAt(await variant.make(world), path, id);
  const before = await readState(fence.owner);
  const answer = await callAs(world, variant, input);
  const places = changedPlaces(before, await readState(fence.owner));
  return { answer: withoutEcho(answer), places: places.map((place) => place.replace(world.teamId, 'mine')) };
}

function callAs(world: World, { path, needs }: Variant, input: unknown) {
  if (needs === 'organiser') return ask(world.organiser.caller, path, input);
  if (needs === 'anyone' || needs === 'account') return ask(makeAccount(fence.house).caller, path, input);
  return ask(world.owner.caller, path, input);
}

/** Where this procedure's schema, and for a push the action's own, asks for ids. */
function schemaIds(variant: Variant): string[] {
  const inputs = PROCEDURES[variant.path]?._def.inputs ?? [];
  const paths = inputs.flatMap((schema) => idPathsOf(schema));
  if (variant.path !== 'work.push') return [...new Set(paths)];
  const kind = variant.name.match(/\((\w+)/)?.[1] as keyof typeof actionArgs;
  return [...new Set(paths), ...idPathsOf(actionArgs[kind], ['actions', '0', 'args'])];
}

function presentIds(variant: Variant, input: unknown): string[] {
  return schemaIds(variant).filter((path) => standsAt(input, path));
}

function standsAt(input: unknown, path: string): boolean {
  let place = input;
  for (const key of path.split('.')) place = (place as Record<string, unknown> | null)?.[key];
  return typeof place === 'string';
}

function othersIdsAt(path: string): string[] {
  // In a list of ids the last part is only the place in it.
  const field = path.split('.').findLast((part) => !/^\d+$/.test(part)) ?? '';
  const find = OTHERS_ID[field];
  if (!find) throw new Error(`No id of others is known for the field ${path}.`);
  return [find(others), ...(DRAFT_ID[field] ? [DRAFT_ID[field](others)] : [])];
}
