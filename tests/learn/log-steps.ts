import { randomUUID } from 'node:crypto';
import type { ActionBody, CarFact, FactPlace, Finding } from '@halfshaft/worklog';
import { expect } from 'vitest';
import { ITINERARY, makeAction, type TeamAtEvent, taskRef } from '../support/event';

/** What the tests of this folder write in a log, word by word. */

/** A car at an event. */
export type Entered = Pick<TeamAtEvent, 'teamId' | 'eventId' | 'entryId'>;

/** The team's car at another event of the same route. */
export async function enterAgain({ caller, teamId, carId }: TeamAtEvent, startsOn: string): Promise<Entered> {
  const itinerary = { ...ITINERARY, startsOn };
  const created = await caller.event.create({ teamId, name: `Event of ${startsOn}`, itinerary });
  if (!created.ok) throw new Error('The fixture itinerary has a problem.');
  const { eventId } = created;
  const place = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...place });
  return { teamId, eventId, entryId };
}

/** Pushes as the founder's phone does; fails when anything is refused. */
export async function push(team: TeamAtEvent, { eventId }: Entered, bodies: ActionBody[]): Promise<void> {
  const { caller, teamId, personId } = team;
  const actions = bodies.map((body) => makeAction(body, personId));
  const { results } = await caller.work.push({ teamId, eventId, actions });
  expect(results.filter(({ status }) => status === 'refused')).toEqual([]);
}

/** Stages said to be driven, in rough conditions: those say nothing of a life. */
export const driven = ({ entryId }: Entered, ...stages: number[]): ActionBody[] =>
  stages.map((stage) => ({
    kind: 'confirmStage',
    args: { entryId, stageId: `SS${stage}`, driven: true, conditions: { rough: 1000 } },
  }));
export const record = ({ entryId }: Entered, at: FactPlace, fact: CarFact): ActionBody => ({
  kind: 'recordFact',
  args: { factId: randomUUID(), entryId, at, fact },
});
export const close = (
  { entryId }: Entered,
  cardId: string,
  service: string,
  findings: Finding[] = [],
): ActionBody => ({
  kind: 'closeTask',
  args: { task: taskRef(entryId, cardId, service), findings, readings: [] },
});
export const behind = (stage: number): FactPlace => ({ kind: 'road', afterStageId: `SS${stage}` });
export const found = (grade: Finding['grade'], lookId: string | null, position: string | null): Finding => ({
  ...{ grade, lookId, position },
  words: '',
});
