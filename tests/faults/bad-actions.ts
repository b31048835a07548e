import { randomUUID } from 'node:crypto';
import { ACTION_VERSION, taskIdOf } from '@halfshaft/worklog';
import { type TeamAtEvent, taskRef } from '../support/event';

/** Whom and what the actions below speak of. */
export interface Bench {
  team: TeamAtEvent;
  other: TeamAtEvent;
  mechanic: { personId: string; cookie: string };
  /** The action of the other team that the other team could take back. */
  othersActionId: string;
}

export interface BadAction {
  name: string;
  /** What differs from a sound action by the mechanic, who is the one that pushes. */
  make: (bench: Bench) => { kind: string; args: unknown; by?: string; version?: number };
  code: string;
  says: string[];
}

const cardOf = ({ cardIds }: TeamAtEvent, index = 0) => cardIds[index] ?? '';
const taskOf = ({ team }: Bench) => taskRef(team.entryId, cardOf(team));
const snagBy = ({ team }: Bench) => ({
  ...{ snagId: randomUUID(), entryId: team.entryId, serviceId: 'A' },
  ...{ place: 'RR', words: 'oil on the hub', urgent: false },
});

const LANDING = { kind: 'incident', code: 'hardLanding', place: null, words: '' };
const TYRE = {
  ...{ kind: 'tyre', tyreId: 't1', mark: '12', compound: 'soft', place: 'FL' },
  ...{ treadTenths: null, coldMillibar: null, hotMillibar: null },
};
const OUT = { kind: 'out', forDay: false, cause: 'mechanical', cardId: null, words: '' };
const fittedTo = (cardId: string) => ({ kind: 'fitted', cardId, position: null, words: '' });
const factOf = (entryId: string, fact: object) => ({
  kind: 'recordFact',
  args: { factId: randomUUID(), entryId, at: { kind: 'road', afterStageId: null }, fact },
});

const NOT_LISTED = ['not on the list of this event', 'Look at the list again'];
const NOT_ENTERED = ['not entered in this event', 'Choose the car again'];

export const BAD_ACTIONS: BadAction[] = [
  // Shapes
  {
    name: 'a kind nobody knows',
    make: () => ({ kind: 'paintCar', args: {} }),
    code: 'unknownKind',
    says: ['"paintCar"', 'Reload the page'],
  },
  {
    name: 'a kind that every object has',
    make: () => ({ kind: '__proto__', args: {} }),
    code: 'unknownKind',
    says: ['"__proto__"'],
  },
  {
    name: 'a version that is to come',
    make: (bench) => ({ kind: 'takeTask', args: { task: taskOf(bench) }, version: ACTION_VERSION + 1 }),
    code: 'versionTooNew',
    says: [`(${ACTION_VERSION + 1})`, 'update the server'],
  },
  {
    name: 'a version from before the last',
    make: (bench) => ({ kind: 'takeTask', args: { task: taskOf(bench) }, version: ACTION_VERSION - 2 }),
    code: 'versionTooOld',
    says: [`(${ACTION_VERSION - 2}; now ${ACTION_VERSION})`, 'Reload the page'],
  },
  {
    name: 'no arguments',
    make: () => ({ kind: 'takeTask', args: {} }),
    code: 'malformed',
    says: ['not complete (task)'],
  },
  {
    name: 'an id that is none, deep inside',
    make: (bench) => ({ kind: 'takeTask', args: { task: { ...taskOf(bench), entryId: 'car 7' } } }),
    code: 'malformed',
    says: ['(task.entryId)', 'not the id of a car at an event'],
  },
  {
    name: 'a service that is no letter',
    make: (bench) => ({ kind: 'takeTask', args: { task: { ...taskOf(bench), serviceId: '2nd' } } }),
    code: 'malformed',
    says: ['(task.serviceId)', 'not the letter of a service'],
  },
  {
    name: 'a finding without a grade',
    make: (bench) => {
      const finding = { lookId: null, position: null, words: 'worn' };
      return { kind: 'closeTask', args: { task: taskOf(bench), findings: [finding], readings: [] } };
    },
    code: 'malformed',
    says: ['(findings.0.grade)'],
  },
  {
    name: 'a reading of half a unit',
    make: (bench) => {
      const reading = { readingId: 'pad', position: 'FL', value: 8.5 };
      return { kind: 'closeTask', args: { task: taskOf(bench), findings: [], readings: [reading] } };
    },
    code: 'malformed',
    says: ['(readings.0.value)', 'whole number'],
  },
  {
    name: 'a snag of this version that does not say whether it is urgent',
    make: (bench) => ({ kind: 'raiseSnag', args: { ...snagBy(bench), urgent: undefined } }),
    code: 'malformed',
    says: ['(urgent)'],
  },
  {
    name: 'a tread no tyre has',
    make: ({ team }) => factOf(team.entryId, { ...TYRE, treadTenths: 301 }),
    code: 'malformed',
    says: ['(fact.treadTenths)', 'from 0 to 300'],
  },
  {
    name: 'a lasting repair of what is no job',
    make: ({ team }) => factOf(team.entryId, { kind: 'madeGood', of: 'the exhaust', words: '' }),
    code: 'malformed',
    says: ['(fact.of)', 'not the id of a job'],
  },
  // Ids
  {
    name: 'a person who never was',
    make: (bench) => ({ kind: 'takeTask', args: { task: taskOf(bench) }, by: randomUUID() }),
    code: 'unknownPerson',
    says: ['not in this team', 'Choose who did it again'],
  },
  {
    name: 'a person of another team',
    make: (bench) => ({ kind: 'takeTask', args: { task: taskOf(bench) }, by: bench.other.personId }),
    code: 'unknownPerson',
    says: ['not in this team', 'Choose who did it again'],
  },
  {
    name: 'a card that never was',
    make: ({ team }) => ({ kind: 'closeTask', args: closing(taskRef(team.entryId, randomUUID())) }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a card of another team',
    make: ({ team, other }) => ({ kind: 'closeTask', args: closing(taskRef(team.entryId, cardOf(other))) }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a car of another team',
    make: ({ team, other }) => ({ kind: 'takeTask', args: { task: taskRef(other.entryId, cardOf(team)) } }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a snag nobody raised',
    make: ({ team }) => {
      const source = { kind: 'snag', snagId: randomUUID() };
      return { kind: 'takeTask', args: { task: { entryId: team.entryId, serviceId: 'A', source } } };
    },
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a snag on a car of another team',
    make: (bench) => ({ kind: 'raiseSnag', args: { ...snagBy(bench), entryId: bench.other.entryId } }),
    code: 'unknownEntry',
    says: NOT_ENTERED,
  },
  {
    name: 'a fact about a car of another team',
    make: ({ other }) => factOf(other.entryId, LANDING),
    code: 'unknownEntry',
    says: NOT_ENTERED,
  },
  {
    name: 'a new part on a card of another team',
    make: ({ team, other }) => factOf(team.entryId, fittedTo(cardOf(other))),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a part of another team that broke in an incident',
    make: ({ team, other }) => factOf(team.entryId, { ...LANDING, brokenCardId: cardOf(other) }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a car that is out because of a part of another team',
    make: ({ team, other }) => factOf(team.entryId, { ...OUT, cardId: cardOf(other) }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a car that is out for a cause nobody knows',
    make: ({ team }) => factOf(team.entryId, { ...OUT, cause: 'bad luck' }),
    code: 'malformed',
    says: ['Choose why the car is out'],
  },
  {
    name: 'preparation at home with one card of another team among its own',
    make: ({ team, other }) =>
      factOf(team.entryId, { kind: 'prepared', cardIds: [cardOf(team), cardOf(other)] }),
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a lasting repair of a job that never was',
    make: ({ team }) => {
      const of = taskIdOf(taskRef(team.entryId, randomUUID()));
      return factOf(team.entryId, { kind: 'madeGood', of, words: '' });
    },
    code: 'unknownTask',
    says: NOT_LISTED,
  },
  {
    name: 'a stage that is not in the itinerary',
    make: ({ team }) => ({
      kind: 'confirmStage',
      args: { entryId: team.entryId, stageId: 'SS99', driven: true, conditions: {} },
    }),
    code: 'unknownStage',
    says: ['stage is not in the itinerary', 'Choose it again'],
  },
  {
    name: 'a service that is not in the itinerary',
    make: ({ team }) => ({ kind: 'takeTask', args: { task: taskRef(team.entryId, cardOf(team), 'ZZ') } }),
    code: 'serviceCancelled',
    says: ['service was cancelled', 'next service'],
  },
  {
    name: 'taking back what never was',
    make: () => ({ kind: 'undo', args: { actionId: randomUUID() } }),
    code: 'nothingToUndo',
    says: ['nothing to take back'],
  },
  {
    name: 'taking back what another team did',
    make: ({ othersActionId }) => ({ kind: 'undo', args: { actionId: othersActionId } }),
    code: 'nothingToUndo',
    says: ['nothing to take back'],
  },
  // Standing
  {
    name: 'a signature given for someone else',
    make: (bench) => ({ kind: 'signTask', args: { task: taskOf(bench) }, by: bench.team.personId }),
    code: 'signForYourself',
    says: ['only be given by the person who signs'],
  },
  {
    name: 'a job left without a reason',
    make: (bench) => ({ kind: 'carryOverTask', args: { task: taskOf(bench), reason: ' ' } }),
    code: 'reasonMissing',
    says: ['reason is missing', 'a few words why'],
  },
];

function closing(task: ReturnType<typeof taskRef>) {
  return { task, findings: [], readings: [] };
}
