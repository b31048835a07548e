import type { EventReplica } from '@halfshaft/contract';
import { type Itinerary, servicesOf } from '@halfshaft/itinerary';
import { ACTION_VERSION, type ActionBody } from '@halfshaft/worklog';
import type { DemoAccess, DemoHome } from './access';
import { DEMO_ITINERARY, DEMO_TIME_ZONE } from './itinerary';
import { factOf, SEASON, SEASON_CAR, SEASON_ROUNDS, type SeasonEvent } from './season';

const DAY_MILLIS = 86_400_000;
const ISO_DATE_LENGTH = 10;
const HOURS_INTO_DAY = 12 * 3_600_000;

/** Plays a season before the demo's event into the log of one more car, so that what keeps failing can be seen. */
export async function playSeason(access: DemoAccess, home: DemoHome): Promise<void> {
  const { teamId, founderUserId } = home;
  const { name, drive, surface } = SEASON_CAR;
  const { carId } = await access
    .callAs(founderUserId)
    .car.create({ teamId, name, drive, surface, starterCards: 'small' });
  for (const event of SEASON) await playEvent(access, home, carId, event);
}

async function playEvent(
  access: DemoAccess,
  { teamId, founderUserId, people }: DemoHome,
  carId: string,
  event: SeasonEvent,
): Promise<void> {
  const today = Date.parse(`${access.today(DEMO_TIME_ZONE)}T00:00:00Z`);
  const day = today - event.daysBefore * DAY_MILLIS;
  const startsOn = new Date(day).toISOString().slice(0, ISO_DATE_LENGTH);
  const caller = access.callAs(founderUserId, day);
  const itinerary = { source: DEMO_ITINERARY, timeZone: DEMO_TIME_ZONE, startsOn };
  const timing = { roadTimedFrom: 'stageStart' as const, startIntervalSeconds: 60, defaultGapSeconds: 180 };
  const created = await caller.event.create({
    teamId,
    name: event.name,
    itinerary: { ...itinerary, ...timing },
  });
  if (!created.ok) throw new Error(`The demo itinerary has a problem: ${created.problems[0]?.message}`);
  const { eventId } = created;
  const { carNumber, startPosition, people: hands } = SEASON_CAR;
  const place = { carNumber, startPosition, people: hands };
  await caller.event.enter({ teamId, eventId, carId, ...place });
  const bodies = bodiesOf(access, event, await caller.event.get({ teamId, eventId }));
  const by = Object.values(people)[0]?.personId ?? '';
  const actions = bodies.map((body, index) => ({
    ...body,
    ...{ actionId: access.newId(), deviceId: `demo-season-${eventId}`, deviceSeq: index + 1 },
    ...{ deviceTime: day + HOURS_INTO_DAY, version: ACTION_VERSION, by },
  }));
  const { results } = await caller.work.push({ teamId, eventId, actions });
  const refused = results.find((result) => result.status === 'refused');
  if (refused) throw new Error(`The demo could not be loaded: ${refused.sentence}`);
}

function bodiesOf(access: DemoAccess, event: SeasonEvent, replica: EventReplica): ActionBody[] {
  const { entryId = '', cards = [] } = replica.entries[0] ?? {};
  const cardOf = (starterId: string) => {
    const card = cards.find((each) => each.starterId === starterId);
    if (!card) throw new Error(`The demo's cards have no ${starterId}.`);
    return card;
  };
  const stages = Array.from({ length: event.lastStage }, (_, index): ActionBody => {
    const args = { entryId, stageId: `SS${index + 1}`, driven: true, conditions: {} };
    return { kind: 'confirmStage', args };
  });
  const facts = event.notes.flatMap((note): ActionBody[] => {
    const fact = factOf(note, (starterId) => cardOf(starterId).id);
    if (!fact) return [];
    return [{ kind: 'recordFact', args: { factId: access.newId(), entryId, at: note.at, fact } }];
  });
  const looks = servicesUpTo(replica.itinerary, event.lastStage).flatMap((serviceId) =>
    SEASON_ROUNDS.map((starterId): ActionBody => {
      const card = cardOf(starterId);
      const findings = event.notes.flatMap(({ at, said }) => {
        if (said.kind !== 'found' || said.starterId !== starterId) return [];
        if (at.kind !== 'service' || at.serviceId !== serviceId) return [];
        const { position, words, look } = said;
        return [{ lookId: card.looks[look]?.id ?? null, position, grade: 'needsWork' as const, words }];
      });
      const task = { entryId, serviceId, source: { kind: 'card' as const, cardId: card.id } };
      return { kind: 'closeTask', args: { task, findings, readings: [] } };
    }),
  );
  return [...stages, ...looks, ...facts];
}

/** The services the car reached. */
function servicesUpTo(itinerary: Itinerary, lastStage: number): string[] {
  const stagesBefore = (index: number) =>
    itinerary.points.slice(0, index).filter(({ kind }) => kind === 'stage').length;
  return servicesOf(itinerary)
    .filter(({ inIndex }) => stagesBefore(inIndex) <= lastStage)
    .map(({ id }) => id);
}
