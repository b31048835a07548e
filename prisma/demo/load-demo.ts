import type { DemoAccess, DemoCaller, DemoEdition, DemoHouse } from './access';
import { DEMO_ORGANISER, DEMO_TEAMS, type DemoCar, type DemoTeam } from './cast';
import { DEMO_EVENT_NAME, DEMO_ITINERARY, DEMO_TIME_ZONE } from './itinerary';
import { playDemo } from './play-demo';
import { playSeason } from './play-season';
import { DEMO_RETIREMENTS } from './retirements';
import { DEMO_TIMES } from './times';

const HELPER_DAYS = 30;
const UNUSED_POSITION = 1;

/** Founds the demo's teams and its organiser. Once for each database; each edition of the event comes on top. */
export async function loadDemoHouse(access: DemoAccess): Promise<DemoHouse> {
  const organiserUser = await access.signUp(DEMO_ORGANISER.person, DEMO_ORGANISER.email);
  const { organiserId } = await access.callAs(organiserUser).organiser.create({ name: DEMO_ORGANISER.name });
  const teams: DemoHouse['teams'] = {};
  for (const team of DEMO_TEAMS) teams[team.key] = await loadTeam(access, team);
  const [first] = DEMO_TEAMS;
  const home = first && teams[first.key];
  if (home) await playSeason(access, home);
  return { organiser: { organiserId, userId: organiserUser }, teams };
}

async function loadTeam(access: DemoAccess, team: DemoTeam): Promise<DemoHouse['teams'][string]> {
  const [founder, ...others] = team.people;
  if (!founder) throw new Error(`The demo team ${team.name} has nobody to found it.`);
  const founderUser = await access.signUp(founder.name, founder.email);
  const caller = access.callAs(founderUser);
  const { teamId, personId } = await caller.team.create({ name: team.name, personName: founder.name });
  const people: DemoHouse['teams'][string]['people'] = { [founder.key]: { userId: founderUser, personId } };
  for (const person of others) {
    const userId = await access.signUp(person.name, person.email);
    const role = person.role === 'admin' ? 'manager' : person.role;
    const { token } = await caller.invite.create({ teamId, role, eventId: null, days: HELPER_DAYS });
    const joined = await access.callAs(userId).invite.accept({ token, name: person.name });
    people[person.key] = { userId, personId: joined.personId };
  }
  const cars: Record<string, string> = {};
  for (const car of team.cars) cars[car.key] = (await addCar(caller, teamId, car)).carId;
  return { teamId, founderUserId: founderUser, people, cars };
}

function addCar(caller: DemoCaller, teamId: string, { name, drive, surface }: DemoCar) {
  return caller.car.create({ teamId, name, drive, surface, starterCards: 'small' });
}

/**
 * An edition of the event that begins today and is half run at this moment: the organiser publishes it, both teams take
 * it over and enter their cars, and the first loop and a half is in the log.
 */
export async function loadDemoEdition(access: DemoAccess, house: DemoHouse): Promise<DemoEdition> {
  const startsOn = access.today(DEMO_TIME_ZONE);
  const itinerary = {
    source: DEMO_ITINERARY,
    timeZone: DEMO_TIME_ZONE,
    startsOn,
    roadTimedFrom: 'stageStart' as const,
    startIntervalSeconds: 60,
    defaultGapSeconds: 180,
  };
  const { organiserId, userId } = house.organiser;
  const organiser = access.callAs(userId);
  const saved = await organiser.organiser.saveEvent({
    organiserId,
    publishedEventId: null,
    name: DEMO_EVENT_NAME,
    itinerary,
  });
  if (!saved.ok) throw new Error(`The demo itinerary has a problem: ${saved.problems[0]?.message}`);
  const { publishedEventId } = saved;
  await organiser.organiser.publish({ organiserId, publishedEventId });
  const list = { organiserId, publishedEventId, source: DEMO_RETIREMENTS, replaces: null };
  const kept = await organiser.retirement.save(list);
  if (!kept.ok) throw new Error(`The demo’s list of retirements has a problem: ${kept.problems[0]?.message}`);
  const times = { organiserId, publishedEventId, source: DEMO_TIMES, maxLateMinutes: 15, replaces: null };
  const timed = await organiser.timeList.save(times);
  if (!timed.ok) throw new Error(`The demo’s list of times has a problem: ${timed.problems[0]?.message}`);
  const events: Record<string, string> = {};
  for (const team of DEMO_TEAMS) events[team.key] = await enterTeam(access, house, team, publishedEventId);
  return { startsOn, events };
}

async function enterTeam(access: DemoAccess, house: DemoHouse, team: DemoTeam, publishedEventId: string) {
  const home = house.teams[team.key];
  if (!home) throw new Error(`The demo team ${team.key} was not founded.`);
  const { teamId, founderUserId, cars } = home;
  const caller = access.callAs(founderUserId);
  const { organiserId } = house.organiser;
  const { eventId } = await caller.event.takeOver({ teamId, organiserId, publishedEventId });
  for (const { key, carNumber, startPosition, people } of team.cars) {
    const carId = cars[key];
    if (carId) await caller.event.enter({ teamId, eventId, carId, carNumber, startPosition, people });
  }
  const replica = await caller.event.get({ teamId, eventId });
  const lead = replica.entries[0];
  await access.setEventClock(home, replica, lead?.startPosition ?? UNUSED_POSITION);
  await playDemo(access, home, await caller.event.get({ teamId, eventId }));
  return eventId;
}
