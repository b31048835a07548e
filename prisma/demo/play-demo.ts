import type { EntryReplica, EventReplica } from '@halfshaft/contract';
import { dueAt, servicesOf } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import { ACTION_VERSION, type ActionBody, type Finding, type Reading } from '@halfshaft/worklog';
import type { DemoAccess, DemoHome } from './access';

/** Whole-number units of the starter cards: tenths of a millimetre, hundredths of a bar, Nm, tenths of a volt. */
const READING_VALUES: Record<string, number> = {
  tread: 62,
  pads: 84,
  pressure: 195,
  torque: 110,
  volts: 126,
  added: 2,
};
const OTHER_VALUE = 1;

/** Who does what in the demo, by role: the second to sign must be another person than the one who did it. */
interface Hands {
  one: string;
  two: string;
  crew: string;
}

/** Plays the event's first hours into the log: stages confirmed, Service A done, Service B begun, one snag. */
export async function playDemo(access: DemoAccess, home: DemoHome, replica: EventReplica): Promise<void> {
  const keys = Object.keys(home.people);
  const [founder = '', second = founder] = keys;
  const hands = { one: second, two: keys[2] ?? founder, crew: keys[3] ?? founder };
  for (const entry of replica.entries) await playCar(access, home, { replica, entry, hands });
}

interface CarPlay {
  replica: EventReplica;
  entry: EntryReplica;
  hands: Hands;
}

async function playCar(access: DemoAccess, home: DemoHome, play: CarPlay): Promise<void> {
  const { replica, entry, hands } = play;
  const [first, next] = servicesOf(replica.itinerary);
  if (!first || !next) return;
  const send = sender(access, home, replica);
  const clockAt = (index: number, seconds: number) =>
    dueAt(replica.itinerary, index, entry.startPosition) + seconds;
  const { entryId } = entry;
  for (const stageId of ['SS1', 'SS2']) {
    const conditions = { dust: 500, rough: stageId === 'SS2' ? 500 : 0 };
    await send(hands.crew, clockAt(first.inIndex, -120), {
      kind: 'confirmStage',
      args: { entryId, stageId, driven: true, conditions },
    });
  }
  await workThrough(play, first.id, clockAt(first.inIndex, 240), send);
  for (const stageId of ['SS3', 'SS4']) {
    const args = { entryId, stageId, driven: true, conditions: { dust: 500 } };
    await send(hands.crew, clockAt(next.inIndex, -90), { kind: 'confirmStage', args });
  }
  const snag = { snagId: access.newId(), entryId, serviceId: next.id, urgent: true };
  const args = { ...snag, place: 'frontLeft', words: 'Knock over bumps, worse under braking' };
  await send(hands.crew, clockAt(next.inIndex, -60), { kind: 'raiseSnag', args });
  const [round] = entry.cards.filter((card) => card.kind === 'round');
  if (round)
    await send(hands.one, clockAt(next.inIndex, 60), {
      kind: 'takeTask',
      args: { task: taskFor(play, next.id, round) },
    });
}

type Send = (person: string, at: number, body: ActionBody) => Promise<void>;

/** Everything that comes round at every service is closed; one round finds something; the nuts get their second signature. */
async function workThrough(play: CarPlay, serviceId: string, from: number, send: Send): Promise<void> {
  const { entry, hands } = play;
  const due = entry.cards.filter((card) => card.intervals.some(({ counter }) => counter === 'services'));
  for (const [index, card] of due.entries()) {
    const task = taskFor(play, serviceId, card);
    const person = index % 2 === 0 ? hands.one : hands.two;
    const at = from + index * 100;
    await send(person, at, { kind: 'takeTask', args: { task } });
    await send(person, at + 80, {
      kind: 'closeTask',
      args: { task, findings: findingsFor(card, index), readings: readingsFor(card) },
    });
    if (card.needsSignature) {
      await send(person === hands.one ? hands.two : hands.one, at + 95, { kind: 'signTask', args: { task } });
    }
  }
}

function taskFor({ entry }: CarPlay, serviceId: string, card: JobCard) {
  return { entryId: entry.entryId, serviceId, source: { kind: 'card' as const, cardId: card.id } };
}

function findingsFor(card: JobCard, index: number): Finding[] {
  const look = card.looks[0];
  if (index !== 0 || !look) return [];
  return [
    {
      lookId: look.id,
      position: 'FL',
      grade: 'watch',
      words: 'Small cut in the shoulder, no cord to be seen',
    },
  ];
}

function readingsFor(card: JobCard): Reading[] {
  return card.readings.flatMap(({ id, positions }): Reading[] => {
    const value = READING_VALUES[id] ?? OTHER_VALUE;
    if (positions.length === 0) return [{ readingId: id, position: null, value }];
    return positions.map((position, place) => ({ readingId: id, position, value: value - place }));
  });
}

/** Pushes as the person, with the server's and the device's clock set to the event's official time `at` (epoch seconds). */
function sender(access: DemoAccess, home: DemoHome, replica: EventReplica): Send {
  const counts = new Map<string, number>();
  return async (key, at, body) => {
    const person = home.people[key];
    if (!person) throw new Error(`Nobody in the demo is called ${key}.`);
    const deviceTime = (at - replica.clockOffsetSeconds) * 1000;
    const deviceSeq = (counts.get(key) ?? 0) + 1;
    counts.set(key, deviceSeq);
    const action = {
      ...body,
      actionId: access.newId(),
      deviceId: `demo-${key}-${replica.eventId}`,
      deviceSeq,
      deviceTime,
      version: ACTION_VERSION,
      by: person.personId,
    };
    const { teamId } = home;
    const caller = access.callAs(person.userId, deviceTime);
    const { results } = await caller.work.push({ teamId, eventId: replica.eventId, actions: [action] });
    const refused = results.find((result) => result.status === 'refused');
    if (refused) throw new Error(`The demo could not be loaded: ${refused.sentence}`);
  };
}
