import { randomUUID } from 'node:crypto';
import type { ActionBody } from '@halfshaft/worklog';
import { ITINERARY, makeAction, taskRef } from '../support/event';
import type { Caller, House } from '../support/house';
import { type Answer, ask } from './answer';

/** Someone with an account in a team. Accounts are plain ids here: sign-in has its own test at the front door. */
export interface Actor {
  userId: string;
  caller: Caller;
  personId: string;
}

/** A team with everything a team can own, and an organiser with everything an organiser can own. */
export interface World {
  teamId: string;
  owner: Actor;
  manager: Actor;
  mechanic: Actor;
  driver: Actor;
  /** Joined by a link for `eventId` only. */
  helper: Actor;
  /** A membership that nothing else hangs on. */
  spare: Actor & { membershipId: string };
  /** Lets in someone who has a password, which the plain ids of the others have not; gives the membership. */
  letInWithPassword(): Promise<string>;
  carId: string;
  cardId: string;
  /** Needs a second signature. */
  signedCardId: string;
  eventId: string;
  entryId: string;
  /** A second car in a second event, with a snag. */
  other: { carId: string; eventId: string; entryId: string; snagId: string };
  /** A car in no event. */
  idleCarId: string;
  inviteId: string;
  token: string;
  snagId: string;
  factId: string;
  actionId: string;
  organiser: {
    userId: string;
    caller: Caller;
    organiserId: string;
    publishedEventId: string;
    draftId: string;
  };
}

export async function foundWorld(house: House): Promise<World> {
  const owner = makeAccount(house);
  const { teamId, personId } = await owner.caller.team.create({ name: 'Team', personName: 'Founder' });
  const founder = { ...owner, personId };
  const { eventId, entryId, carId } = await enterNew(founder, teamId);
  const cards = await owner.caller.card.list({ teamId, carId });
  const signed = cards.find((card) => card.needsSignature);
  const plain = cards.find((card) => !card.needsSignature);
  if (!signed || !plain) throw new Error('The starter cards no longer have both kinds of card.');
  const other = await enterNew(founder, teamId);
  const { carId: idleCarId } = await owner.caller.car.create({ teamId, ...CAR, starterCards: 'none' });
  const join = (role: Role, forEvent: string | null) => joinTeam(house, founder, teamId, { role, forEvent });
  const spare = await join('mechanic', null);
  const forAll = { role: 'mechanic', eventId: null, days: 2 } as const;
  const { inviteId, token } = await owner.caller.invite.create({ teamId, ...forAll });
  const world = {
    teamId,
    owner: founder,
    manager: await join('manager', null),
    mechanic: await join('mechanic', null),
    driver: await join('driver', null),
    helper: await join('mechanic', eventId),
    spare: { ...spare, membershipId: await findMembershipId(founder, teamId, spare.personId) },
    // By who is owner then: at the front door that is another account.
    async letInWithPassword(): Promise<string> {
      const { userId } = await house.signUp('New member');
      const account = { userId, caller: house.callAs(userId) };
      const wanted = { role: 'mechanic', forEvent: null } as const;
      const { personId } = await joinTeam(house, world.owner, teamId, wanted, account);
      return findMembershipId(world.owner, teamId, personId);
    },
    carId,
    cardId: plain.id,
    signedCardId: signed.id,
    eventId,
    entryId,
    other: { ...other, snagId: randomUUID() },
    idleCarId,
    inviteId,
    token,
    snagId: randomUUID(),
    factId: randomUUID(),
    actionId: randomUUID(),
    organiser: await foundOrganiser(house),
  };
  await pushAs(founder, world, snagIn(world));
  await pushAs(founder, { teamId, eventId: other.eventId }, snagIn(world.other));
  await pushAs(founder, world, factIn(world));
  const take: ActionBody = { kind: 'takeTask', args: { task: taskRef(entryId, world.cardId, 'B') } };
  await pushAs(founder, world, take, { actionId: world.actionId });
  return world;
}

type Role = 'manager' | 'mechanic' | 'driver';
export const CAR = { name: 'Car', drive: 'front', surface: 'gravel' } as const;

export function makeAccount(house: House): { userId: string; caller: Caller } {
  const userId = `account-${randomUUID()}`;
  return { userId, caller: house.callAs(userId) };
}

/** A new car with its starter cards in a new event. */
async function enterNew({ caller }: Actor, teamId: string) {
  const { carId } = await caller.car.create({ teamId, ...CAR, starterCards: 'small' });
  const created = await caller.event.create({ teamId, name: 'Event', itinerary: ITINERARY });
  if (!created.ok) throw new Error(`The fixture itinerary has a problem: ${created.problems[0]?.message}`);
  const { eventId } = created;
  const place = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  return { carId, eventId, entryId };
}

export async function joinTeam(
  house: House,
  { caller }: { caller: Caller },
  teamId: string,
  { role, forEvent }: { role: Role; forEvent: string | null },
  account = makeAccount(house),
): Promise<Actor> {
  const { token } = await caller.invite.create({ teamId, role, eventId: forEvent, days: 2 });
  const { personId } = await account.caller.invite.accept({ token, name: `The ${role}` });
  return { ...account, personId };
}

async function findMembershipId({ caller }: Actor, teamId: string, personId: string): Promise<string> {
  const people = await caller.people.list({ teamId });
  const membership = people.find((person) => person.personId === personId)?.membership;
  if (!membership) throw new Error('Who joined by a link has no membership.');
  return membership.membershipId;
}

async function foundOrganiser(house: House): Promise<World['organiser']> {
  const account = makeAccount(house);
  const { organiserId } = await account.caller.organiser.create({ name: 'Club' });
  const event = { organiserId, publishedEventId: null, name: 'Event', itinerary: ITINERARY };
  const published = await account.caller.organiser.saveEvent(event);
  const draft = await account.caller.organiser.saveEvent(event);
  if (!published.ok || !draft.ok) throw new Error('The fixture itinerary has a problem.');
  const { publishedEventId } = published;
  await account.caller.organiser.publish({ organiserId, publishedEventId });
  for (const id of [publishedEventId, draft.publishedEventId]) {
    const list = { section: 1, source: 'Car Position\n7 3' };
    await account.caller.startList.save({ organiserId, publishedEventId: id, ...list });
  }
  const stopped = 'Car,What happened,Where,Cause\n7,out,in SS1,mechanical';
  await account.caller.retirement.save({ organiserId, publishedEventId, source: stopped, replaces: null });
  const times = { source: 'Car,Control,Minutes late\n7,TC1,2', maxLateMinutes: 15, replaces: null };
  await account.caller.timeList.save({ organiserId, publishedEventId, ...times });
  // Of a published event, too, what is not issued is nobody else's business.
  const later = { ...ITINERARY, startsOn: '2026-06-27' };
  await account.caller.organiser.saveEvent({ ...event, publishedEventId, itinerary: later });
  return { ...account, organiserId, publishedEventId, draftId: draft.publishedEventId };
}

function snagIn({ snagId, entryId }: { snagId: string; entryId: string }): ActionBody {
  const words = { place: 'frontLeft', words: 'Knocks over bumps', urgent: true };
  return { kind: 'raiseSnag', args: { snagId, entryId, serviceId: 'A', ...words } };
}

function factIn({ factId, entryId }: { factId: string; entryId: string }): ActionBody {
  const fact = { kind: 'incident', code: 'ford', place: null, words: 'Up to the sills' } as const;
  return { kind: 'recordFact', args: { factId, entryId, at: { kind: 'road', afterStageId: 'SS1' }, fact } };
}

interface Stamp {
  actionId?: string;
  by?: string;
  deviceTime?: number;
}

/** Pushes one action, whatever becomes of it. */
export function tryPush(
  actor: { caller: Caller; personId: string },
  { teamId, eventId }: { teamId: string; eventId: string },
  body: ActionBody,
  stamp: Stamp = {},
): Promise<Answer> {
  const action = makeAction(body, stamp.by ?? actor.personId, stamp);
  return ask(actor.caller, 'work.push', { teamId, eventId, actions: [action] });
}

/** Pushes one action that must be accepted; returns its id. */
export async function pushAs(
  actor: { caller: Caller; personId: string },
  { teamId, eventId }: { teamId: string; eventId: string },
  body: ActionBody,
  stamp: Stamp = {},
): Promise<string> {
  const action = makeAction(body, stamp.by ?? actor.personId, stamp);
  const { results } = await actor.caller.work.push({ teamId, eventId, actions: [action] });
  const [result] = results;
  if (result?.status !== 'accepted') throw new Error(`A fixture's action was refused: ${result?.sentence}`);
  return action.actionId;
}
