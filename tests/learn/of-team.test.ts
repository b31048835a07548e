import { randomUUID } from 'node:crypto';
import { exposuresOf, failuresOf, observationsOf } from '@halfshaft/reliability';
import {
  type ActionBody,
  type CarFact,
  carLivesOf,
  lifeQuestionOf,
  loggedEventOf,
  partOfId,
  rebuild,
} from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { foundTeamAtEvent, joinTeam, type TeamAtEvent } from '../support/event';
import { keepHouse } from '../support/keep-house';
import { behind, close, driven, enterAgain, found, push, record } from './log-steps';

const house = keepHouse();

/** Stages of the fixture's itinerary, in metres as printed in it: SS1 to SS9. */
const STAGES = [11_400, 7_250, 11_400, 7_250, 16_900, 9_300, 16_900, 13_750, 13_750];
const ALL = STAGES.reduce((sum, metres) => sum + metres, 0);
/** Driven when the car arrives at Service A, B …, by their place in the itinerary. */
const [AT_A, AT_B] = [18_650, 37_300];

async function cardOf({ caller, teamId, carId }: TeamAtEvent, starter: string) {
  const cards = await caller.card.list({ teamId, carId });
  const card = cards.find(({ starterId }) => starterId === `starter:${starter}`);
  if (!card) throw new Error(`The starter set has no card "${starter}".`);
  return card;
}

/** Two events: a hose found at Service A, pads that were worn out, a filter that put the car out, and back in the second. */
async function playSeason(name: string) {
  const team = await foundTeamAtEvent(house, name);
  const second = await enterAgain(team, '2026-07-11');
  const [corner, pads, filter] = [
    await cardOf(team, 'front-corners'),
    await cardOf(team, 'front-pads'),
    await cardOf(team, 'air-filter'),
  ];
  const look = corner.looks[0];
  if (!look) throw new Error('The round has no look.');
  const worn: CarFact = { kind: 'fitted', cardId: pads.id, position: 'FL', words: '', because: 'wornOut' };
  const out: CarFact = { kind: 'out', forDay: false, cause: 'mechanical', cardId: filter.id, words: '' };
  await push(team, team, [
    ...driven(team, 1, 2, 3, 4),
    close(team, corner.id, 'A', [found('needsWork', look.id, 'FL')]),
    close(team, corner.id, 'B', [found('watch', look.id, 'FL')]),
    record(team, { kind: 'road', afterStageId: null }, { kind: 'prepared', cardIds: [pads.id] }),
    record(team, { kind: 'service', serviceId: 'B' }, worn),
    record(team, behind(5), out),
  ]);
  await push(team, second, [
    ...driven(second, 1, 2, 3, 4, 5, 6, 7, 8, 9),
    close(second, corner.id, 'A', [found('temporaryRepair', look.id, 'FL')]),
  ]);
  return { team, second, corner, look, pads, filter };
}

it('tells a manager what failed on the car, how often and where, over both events', async () => {
  const { team, second, corner, look, pads, filter } = await playSeason('Season');
  const { cars, events } = await team.caller.reliability.ofTeam({ teamId: team.teamId });
  expect(events.map(({ eventId }) => eventId)).toEqual([team.eventId, second.eventId]);
  const [car] = cars;
  // Out on SS5: four stages of the first event, all of the second, whatever the conditions were.
  expect(car).toMatchObject({ carId: team.carId, events: 2, stageMetres: AT_B + ALL, soundCards: 10 });
  const part = (cardId: string) => car?.parts.find((each) => each.cardId === cardId);
  expect(part(corner.id)).toMatchObject({
    ...{ name: look.words, roundName: corner.name, counter: 'stageMetres', watched: AT_B + ALL },
    failures: [
      { at: AT_A, eventId: team.eventId, position: 'FL' },
      { at: AT_B + AT_A, eventId: second.eventId, position: 'FL' },
    ],
  });
  // New at home, worn out at Service B; the new ones of FL and the other three run on.
  expect(part(pads.id)).toMatchObject({
    every: 150_000,
    renews: true,
    failures: [{ at: AT_B, position: 'FL' }],
  });
  expect(part(pads.id)?.lives.observations).toEqual([
    { kind: 'failedAt', distance: AT_B },
    { kind: 'goodAt', distance: ALL },
    { kind: 'goodAt', distance: AT_B + ALL },
  ]);
  expect(part(filter.id)).toMatchObject({ failures: [{ at: AT_B, eventId: team.eventId }] });
});

it('gathers in the database what the log itself gives, entry by entry', async () => {
  const { team, second } = await playSeason('Oracle');
  const { caller, teamId, carId } = team;
  const logged = await Promise.all(
    [team, second].map(async ({ eventId, entryId }) => {
      const { itinerary } = await caller.event.get({ teamId, eventId });
      const { entries } = await caller.work.pull({ teamId, eventId, since: 0 });
      return loggedEventOf(rebuild(entries), { eventId, itinerary, isOver: true }, entryId);
    }),
  );
  const [car] = (await caller.reliability.ofTeam({ teamId })).cars;
  expect(car?.parts).toHaveLength(3);
  const cards = await caller.card.list({ teamId, carId });
  for (const { partId, counter, renews, failures, lives } of car?.parts ?? []) {
    const card = cards.find(({ id }) => id === partId.split('~')[0]);
    if (!card) throw new Error('A part of no card of the car.');
    const question = lifeQuestionOf(card, partOfId(partId));
    expect(renews).toBe(question.doneRenews);
    expect(question.counter).toBe(counter);
    const history = carLivesOf({ carId, events: logged, carried: {} }, [question]);
    expect(failures.map(({ at, position }) => ({ at, position }))).toEqual(
      failuresOf(history, question).map(({ at, position }) => ({ at, position })),
    );
    expect(lives).toEqual(observationsOf(exposuresOf([history], [question])));
  }
});

it('takes back with the log: what is undone was never said', async () => {
  const { team, filter } = await playSeason('Undone');
  const { caller, teamId, eventId } = team;
  const { entries } = await caller.work.pull({ teamId, eventId, since: 0 });
  const out = entries.find(({ body }) => body.kind === 'factRecorded' && body.fact.kind === 'out');
  await push(team, team, [{ kind: 'undo', args: { actionId: out?.actionId ?? '' } }]);
  const [car] = (await caller.reliability.ofTeam({ teamId })).cars;
  expect(car?.parts.map(({ cardId }) => cardId)).not.toContain(filter.id);
});

it('says nothing of a car whose log is empty', async () => {
  const team = await foundTeamAtEvent(house, 'Running');
  const { caller, teamId } = team;
  expect((await caller.reliability.ofTeam({ teamId })).cars).toMatchObject([
    { events: 1, stageMetres: 0, parts: [], soundCards: 13, snags: [] },
  ]);
});

it('counts snags by place, and is for managers', async () => {
  const team = await foundTeamAtEvent(house, 'Snags');
  const { caller, teamId, entryId } = team;
  const snag = (place: string): ActionBody => ({
    kind: 'raiseSnag',
    args: { snagId: randomUUID(), entryId, serviceId: 'A', place, words: 'Knocks', urgent: false },
  });
  await push(team, team, [snag('frontLeft'), snag('frontLeft'), snag('boot')]);
  const [car] = (await caller.reliability.ofTeam({ teamId })).cars;
  expect(car?.snags).toEqual([
    { place: 'frontLeft', times: 2 },
    { place: 'boot', times: 1 },
  ]);
  const mechanic = await joinTeam(house, team, 'Mechanic');
  await expect(mechanic.caller.reliability.ofTeam({ teamId })).rejects.toThrow('a manager');
});
