import { randomUUID } from 'node:crypto';
import { DEMO_ITINERARY } from '@halfshaft/prisma/demo';
import { ACTION_VERSION, type ActionBody } from '@halfshaft/worklog';
import type { Caller, House } from './house';

/** The demo's invented itinerary on a fixed day. */
export const ITINERARY = {
  source: DEMO_ITINERARY,
  timeZone: 'Europe/London',
  startsOn: '2026-06-13',
  roadTimedFrom: 'stageStart' as const,
  startIntervalSeconds: 60,
  defaultGapSeconds: 180,
};

export type Account = Pick<TeamAtEvent, 'userId' | 'cookie'>;

/** A team of one with a car that has the starter cards, entered in an event. */
export interface TeamAtEvent {
  userId: string;
  cookie: string;
  caller: Caller;
  teamId: string;
  personId: string;
  carId: string;
  eventId: string;
  entryId: string;
  cardIds: string[];
}

/** `account`: of someone who signed up before; left away, someone new. */
export async function foundTeamAtEvent(house: House, name = 'Team', account?: Account): Promise<TeamAtEvent> {
  const { userId, cookie } = account ?? (await house.signUp(`${name} Founder`));
  const caller = house.callAs(userId);
  const { teamId, personId } = await caller.team.create({ name, personName: `${name} Founder` });
  const car = {
    name: `${name} car`,
    drive: 'front' as const,
    surface: 'gravel' as const,
    starterCards: 'small' as const,
  };
  const { carId } = await caller.car.create({ teamId, ...car });
  const created = await caller.event.create({ teamId, name: `${name} event`, itinerary: ITINERARY });
  if (!created.ok) throw new Error(`The fixture itinerary has a problem: ${created.problems[0]?.message}`);
  const { eventId } = created;
  const entry = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...entry });
  const cards = await caller.card.list({ teamId, carId });
  return {
    userId,
    cookie,
    caller,
    teamId,
    personId,
    carId,
    eventId,
    entryId,
    cardIds: cards.map((card) => card.id),
  };
}

/** Another account that joins the team by a link. */
export async function joinTeam(
  house: House,
  team: TeamAtEvent,
  name: string,
  role: 'manager' | 'mechanic' | 'driver' = 'mechanic',
  account?: Account,
) {
  const { userId, cookie } = account ?? (await house.signUp(name));
  const { token } = await team.caller.invite.create({ teamId: team.teamId, role, eventId: null, days: 2 });
  const caller = house.callAs(userId);
  const { personId } = await caller.invite.accept({ token, name });
  return { userId, cookie, caller, personId };
}

let lastSeq = 0;

/** An action as a phone would push it. */
export function makeAction(
  body: ActionBody,
  by: string,
  stamp: { actionId?: string; deviceId?: string; deviceTime?: number } = {},
) {
  lastSeq += 1;
  return {
    ...body,
    actionId: stamp.actionId ?? randomUUID(),
    deviceId: stamp.deviceId ?? 'test-device',
    deviceSeq: lastSeq,
    deviceTime: stamp.deviceTime ?? 1_780_000_000_000 + lastSeq,
    version: ACTION_VERSION,
    by,
  };
}

export function taskRef(entryId: string, cardId: string, serviceId = 'A') {
  return { entryId, serviceId, source: { kind: 'card' as const, cardId } };
}
