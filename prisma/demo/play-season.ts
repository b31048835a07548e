import { ACTION_VERSION, type ActionBody } from '@halfshaft/worklog';
import type { DemoAccess, DemoHome } from './access';
import { DEMO_ITINERARY, DEMO_TIME_ZONE } from './itinerary';
import { factOf, SEASON, SEASON_CAR, type SeasonEvent } from './season';

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
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  const cards = await caller.card.list({ teamId, carId });
  const bodies = bodiesOf(access, event, entryId, cards);
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

type Cards = Awaited<ReturnType<ReturnType<DemoAccess['callAs']>['card']['list']>>;

function bodiesOf(access: DemoAccess, event: SeasonEvent, entryId: string, cards: Cards): ActionBody[] {
  const cardOf = (starterId: string) => {
    const card = cards.find((each) => each.starterId === starterId);
    if (!card) throw new Error(`The demo's cards have no ${starterId}.`);
    return card;
  };
  const stages = Array.from({ length: event.lastStage }, (_, index): ActionBody => {
    const args = { entryId, stageId: `SS${index + 1}`, driven: true, conditions: {} };
    return { kind: 'confirmStage', args };
  });
  const notes = event.notes.map((note): ActionBody => {
    const fact = factOf(note, (starterId) => cardOf(starterId).id);
    if (fact) return { kind: 'recordFact', args: { factId: access.newId(), entryId, at: note.at, fact } };
    const { said, at } = note;
    if (said.kind !== 'found' || at.kind !== 'service')
      throw new Error('A look of the demo is at no service.');
    const card = cardOf(said.starterId);
    const { position, words } = said;
    const finding = {
      lookId: card.looks[said.look]?.id ?? null,
      position,
      grade: 'needsWork' as const,
      words,
    };
    const task = { entryId, serviceId: at.serviceId, source: { kind: 'card' as const, cardId: card.id } };
    return { kind: 'closeTask', args: { task, findings: [finding], readings: [] } };
  });
  return [...stages, ...notes];
}
