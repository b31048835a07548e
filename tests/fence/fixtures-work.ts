import { randomUUID } from 'node:crypto';
import { type ActionBody, type ActionKind, type CarFact, type TaskRef, taskIdOf } from '@halfshaft/worklog';
import { makeAction, taskRef } from '../support/event';
import { photoOf } from '../support/photo';
import { type Variant, variant } from './fixture';
import { pushAs, type World } from './world';

/** How to make each kind of action right for a fresh world. A kind that is missing does not compile. */
const BODIES: { [Kind in ActionKind]: (world: World) => Promise<ActionBody> | ActionBody } = {
  takeTask: (world) => ({ kind: 'takeTask', args: { task: plainTask(world) } }),
  releaseTask: async (world) => {
    await push(world, { kind: 'takeTask', args: { task: plainTask(world, 'C') } });
    return { kind: 'releaseTask', args: { task: plainTask(world, 'C') } };
  },
  startTask: (world) => ({ kind: 'startTask', args: { task: plainTask(world) } }),
  closeTask: (world) => ({ kind: 'closeTask', args: { task: plainTask(world), findings: [], readings: [] } }),
  carryOverTask: (world) => ({
    kind: 'carryOverTask',
    args: { task: plainTask(world), reason: 'Out of time' },
  }),
  dropTask: (world) => ({ kind: 'dropTask', args: { task: plainTask(world), reason: 'Not needed' } }),
  reopenTask: async (world) => {
    await push(world, {
      kind: 'closeTask',
      args: { task: plainTask(world, 'D'), findings: [], readings: [] },
    });
    return { kind: 'reopenTask', args: { task: plainTask(world, 'D'), reason: 'Still loose' } };
  },
  signTask: async (world) => {
    const task = taskRef(world.entryId, world.signedCardId);
    await push(
      world,
      { kind: 'closeTask', args: { task, findings: [], readings: [] } },
      world.mechanic.personId,
    );
    return { kind: 'signTask', args: { task } };
  },
  raiseSnag: ({ entryId }) => ({
    kind: 'raiseSnag',
    args: { snagId: randomUUID(), entryId, serviceId: 'A', place: 'boot', words: 'Smells', urgent: false },
  }),
  confirmStage: ({ entryId }) => ({
    kind: 'confirmStage',
    args: { entryId, stageId: 'SS1', driven: true, conditions: {} },
  }),
  recordTime: ({ entryId }) => ({
    kind: 'recordTime',
    args: { entryId, controlId: 'TC2B', writtenAt: 1_781_341_200, heldMinutes: 0 },
  }),
  recordFact: ({ entryId }) => ({
    kind: 'recordFact',
    args: {
      factId: randomUUID(),
      entryId,
      at: { kind: 'road', afterStageId: 'SS1' },
      fact: { kind: 'incident', code: 'hardLanding', place: 'frontLeft', words: 'Bang over the crest' },
    },
  }),
  undo: async (world) => {
    const actionId = await push(world, { kind: 'takeTask', args: { task: plainTask(world, 'E') } });
    return { kind: 'undo', args: { actionId } };
  },
};

/** `work.push` once for each kind of action, and for a snag's repair beside a card's job. */
export function pushFixtures(): Variant[] {
  const kinds = Object.entries(BODIES).map(([kind, body]) => pushFixture(kind, body));
  return [
    ...kinds,
    pushFixture('takeTask of a snag', takeSnag),
    pushFixture('closeTask of a snag', closeSnag),
    pushFixture('recordFact of a new part', recordFitted),
    pushFixture('recordFact of an altered part', recordModified),
    pushFixture('recordFact of a part that broke in an incident', recordBroken),
    pushFixture('recordFact of a car that is out', recordOut),
    pushFixture('recordFact of a lasting repair', recordMadeGood),
    pushFixture('recordFact of preparation at home', recordPrepared),
    pushFixture('recordFact of a photo', (world) => photoOf(snagTask(world)).body),
    pushFixture('takeTask from a phone of several people', BODIES.takeTask, ({ owner }) => ({
      enteredBy: owner.personId,
    })),
  ];
}

function pushFixture(
  special: string,
  body: (world: World) => Promise<ActionBody> | ActionBody,
  more: (world: World) => object = () => ({}),
): Variant {
  const made = ['actions.0.actionId', ...madeIn(special)];
  const make = async (world: World) => {
    const { teamId, eventId, owner } = world;
    const actions = [{ ...makeAction(await body(world), owner.personId) }];
    return { teamId, eventId, actions, ...more(world) };
  };
  return variant('work.push', 'member', make, { special, made });
}

/** Ids the device makes itself, which belong to nobody yet. */
function madeIn(special: string): string[] {
  if (special === 'raiseSnag') return ['actions.0.args.snagId'];
  return special.startsWith('recordFact') ? ['actions.0.args.factId'] : [];
}

const recordFitted = ({ entryId, cardId }: World): ActionBody => ({
  kind: 'recordFact',
  args: {
    factId: randomUUID(),
    entryId,
    at: { kind: 'service', serviceId: 'A' },
    fact: { kind: 'fitted', cardId, position: 'FL', words: '' },
  },
});
const onTheRoad = (entryId: string, fact: CarFact): ActionBody => ({
  kind: 'recordFact',
  args: { factId: randomUUID(), entryId, at: { kind: 'road', afterStageId: 'SS1' }, fact },
});
const recordModified = ({ entryId, cardId }: World): ActionBody =>
  onTheRoad(entryId, { kind: 'modified', cardId, position: null, words: 'Routed away from the exhaust' });
const recordBroken = ({ entryId, cardId: brokenCardId }: World): ActionBody =>
  onTheRoad(entryId, { kind: 'incident', code: 'hardLanding', place: null, words: '', brokenCardId });
const recordOut = ({ entryId, cardId }: World): ActionBody =>
  onTheRoad(entryId, { kind: 'out', forDay: true, cause: 'mechanical', cardId, words: '' });
const recordPrepared = ({ entryId, cardId }: World): ActionBody => ({
  kind: 'recordFact',
  args: {
    factId: randomUUID(),
    entryId,
    at: { kind: 'road', afterStageId: null },
    fact: { kind: 'prepared', cardIds: [cardId] },
  },
});
const recordMadeGood = (world: World): ActionBody => ({
  kind: 'recordFact',
  args: {
    factId: randomUUID(),
    entryId: world.entryId,
    at: { kind: 'service', serviceId: 'B' },
    fact: { kind: 'madeGood', of: taskIdOf(plainTask(world)), words: '' },
  },
});
const takeSnag = (world: World): ActionBody => ({ kind: 'takeTask', args: { task: snagTask(world) } });
const closeSnag = (world: World): ActionBody => ({
  kind: 'closeTask',
  args: { task: snagTask(world), findings: [], readings: [] },
});

/** Kinds that need something done before have a service of their own, so that one world will do for all of them. */
function plainTask({ entryId, cardId }: World, serviceId = 'A'): TaskRef {
  return taskRef(entryId, cardId, serviceId);
}

function snagTask({ entryId, snagId }: World): TaskRef {
  return { entryId, serviceId: 'A', source: { kind: 'snag', snagId } };
}

function push(world: World, body: ActionBody, by?: string): Promise<string> {
  return pushAs(world.owner, world, body, by ? { by } : {});
}
