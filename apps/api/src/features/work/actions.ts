import { actionArgs } from '@halfshaft/contract';
import { type Itinerary, servicesOf } from '@halfshaft/itinerary';
import {
  type Action,
  type ArgsOf,
  type CarFact,
  type PushedAction,
  reopensOf,
  type TaskRef,
  type TaskRules,
  taskRefOf,
  upgradeAction,
  type WorkState,
} from '@halfshaft/worklog';
import type { CardRules, Known, MentionedIds } from './data';

interface Refused {
  ok: false;
  code: string;
  sentence: string;
}

/** An action whose arguments have their shape. `ours` is false for a version or kind that `decide` will name and refuse. */
export type ShapedAction = { ok: true; action: Action; ours: boolean } | Refused;

/** What is known of the things an action speaks of: everything that checking it needs. */
export interface Facts extends Omit<Known, 'itinerary'> {
  services: ReadonlySet<string>;
  stages: ReadonlySet<string>;
  controls: ReadonlySet<string>;
}

const NOT_ENTERED = 'That car is not entered in this event. Choose the car again.';
const GONE = 'That job is not on the list of this event. Look at the list again.';

/** Looks at version, kind and arguments; what the ids in it stand for is `refusalOf`'s to say. */
export function shapeAction(pushed: PushedAction): ShapedAction {
  const upgrade = upgradeAction(pushed);
  if (!upgrade.ok) return { ok: true, action: pushed as Action, ours: false };
  const shape = actionArgs[upgrade.action.kind].safeParse(upgrade.action.args);
  if (shape.success)
    return { ok: true, action: { ...upgrade.action, args: shape.data } as Action, ours: true };
  const first = shape.error.issues[0];
  const where = first?.path.join('.') ?? '';
  return refused('malformed', `What was sent is not complete (${where}): ${first?.message ?? 'unknown'}`);
}

/** Every id in these actions that must be looked up. */
export function idsIn(actions: readonly Action[]): MentionedIds {
  const tasks = actions.flatMap(tasksIn);
  const recorded = actions.flatMap((action) => (action.kind === 'recordFact' ? [action.args] : []));
  const entryIds = actions.flatMap((action) => ('entryId' in action.args ? [action.args.entryId] : []));
  return {
    people: actions.map((action) => action.by),
    entries: [...entryIds, ...tasks.map((task) => task.entryId)],
    cards: [
      ...tasks.flatMap(({ source }) => (source.kind === 'card' ? [source.cardId] : [])),
      ...recorded.flatMap(({ fact }) => cardsOf(fact)),
    ],
    snags: actions.flatMap((action) => (action.kind === 'raiseSnag' ? [action.args.snagId] : [])),
    facts: recorded.map(({ factId }) => factId),
    reopening: actions.flatMap(entryReopening),
    undone: actions.flatMap((action) => (action.kind === 'undo' ? [action.args.actionId] : [])),
  };
}

/** The cards a fact speaks of. */
function cardsOf(fact: CarFact): readonly string[] {
  if (fact.kind === 'prepared') return fact.cardIds;
  if (fact.kind === 'incident') return fact.brokenCardId === undefined ? [] : [fact.brokenCardId];
  return 'cardId' in fact && fact.cardId !== null ? [fact.cardId] : [];
}

/** Work that is done, or done again, may open other cards of the car again; asking for a job never does. */
function entryReopening(action: Action): string[] {
  return action.kind === 'closeTask' || action.kind === 'reopenTask' ? [action.args.task.entryId] : [];
}

/** The task an action is about, and the one a fact speaks of. */
function tasksIn(action: Action): TaskRef[] {
  if ('task' in action.args) return [action.args.task];
  if (action.kind !== 'recordFact' || !('of' in action.args.fact)) return [];
  return [taskRefOf(action.args.fact.of)];
}

/** `places`: other itineraries whose stages and controls hold as well. */
export function factsOf({ itinerary, ...known }: Known, places: Itinerary[] = []): Facts {
  const services = itinerary ? servicesOf(itinerary).map((service) => service.id) : [];
  const points = [...(itinerary ? [itinerary] : []), ...places].flatMap((each) => each.points);
  const namesOf = (kind: 'stage' | 'control') =>
    new Set(points.filter((point) => point.kind === kind).map((point) => point.id));
  return {
    ...known,
    services: new Set(services),
    stages: namesOf('stage'),
    controls: namesOf('control'),
  };
}

/** What `decide` must know of the task an action is about; null when it is about none, or its card is not known. */
export function rulesFor(facts: Facts, action: Action): TaskRules | null {
  if (!('task' in action.args)) return null;
  const { entryId, serviceId, source } = action.args.task;
  const serviceStands = facts.services.has(serviceId);
  if (source.kind === 'snag') {
    return { needsSignature: false, requiredReadings: [], reopens: [], serviceStands };
  }
  const card = facts.cards.get(source.cardId);
  const car = facts.cars.get(facts.carOf.get(entryId) ?? '');
  const reopens = car ? reopensOf(action.args.task, car) : [];
  return card ? { ...rulesOfCard(card), reopens, serviceStands } : null;
}

/**
 * Why the ids in an action do not hold, or null: each must be of this team and this event. An id of another team gets
 * the same answer as one that never existed. Snags are looked for in the slice, which is of this event only.
 */
export function refusalOf(facts: Facts, slice: WorkState, action: Action): Refused | null {
  if (!facts.people.has(action.by)) {
    return refused('unknownPerson', 'That person is not in this team. Choose who did it again.');
  }
  switch (action.kind) {
    case 'undo':
      return null;
    case 'raiseSnag': {
      const { entryId, snagId } = action.args;
      if (facts.carOf.has(entryId) && !facts.snagsElsewhere.has(snagId)) return null;
      return refused('unknownEntry', NOT_ENTERED);
    }
    case 'confirmStage':
      if (facts.carOf.has(action.args.entryId) && facts.stages.has(action.args.stageId)) return null;
      return refused('unknownStage', 'That stage is not in the itinerary of this event. Choose it again.');
    case 'recordTime':
      if (facts.carOf.has(action.args.entryId) && isTimedPlace(facts, action.args)) return null;
      return refused(
        'unknownControl',
        'That control or stage is not in the itinerary of this event. Choose it again.',
      );
    case 'recordFact':
      return refusalOfFact(facts, slice, action.args);
    default:
      return isKnownTask(facts, slice, action.args.task) ? null : refused('unknownTask', GONE);
  }
}

/** A control writes a time, a stage has one at its start and one at its finish. */
function isTimedPlace(facts: Facts, { controlId, finish }: ArgsOf<'recordTime'>): boolean {
  return facts.stages.has(controlId) || (!finish && facts.controls.has(controlId));
}

/**
 * Where it belongs is not looked up: a stage or service that an amendment dropped meanwhile must not cost a fact. What
 * it speaks of must be of this car.
 */
function refusalOfFact(facts: Facts, slice: WorkState, args: ArgsOf<'recordFact'>): Refused | null {
  const carId = facts.carOf.get(args.entryId);
  if (carId === undefined || facts.factsElsewhere.has(args.factId)) {
    return refused('unknownEntry', NOT_ENTERED);
  }
  const { fact } = args;
  if (cardsOf(fact).some((cardId) => facts.cards.get(cardId)?.carId !== carId)) {
    return refused('unknownTask', GONE);
  }
  if (!('of' in fact)) return null;
  const task = taskRefOf(fact.of);
  const isOurs = task.entryId === args.entryId && isKnownTask(facts, slice, task);
  return isOurs ? null : refused('unknownTask', GONE);
}

function isKnownTask(facts: Facts, slice: WorkState, { entryId, source }: TaskRef): boolean {
  const carId = facts.carOf.get(entryId);
  if (carId === undefined) return false;
  if (source.kind === 'snag') return slice.snags.has(source.snagId);
  return facts.cards.get(source.cardId)?.carId === carId;
}

function rulesOfCard({ needsSignature, readings }: CardRules): Omit<TaskRules, 'serviceStands' | 'reopens'> {
  const required = readings.filter((reading) => reading.required);
  return { needsSignature, requiredReadings: required.flatMap(placesOf) };
}

function placesOf({ id, positions }: CardRules['readings'][number]): TaskRules['requiredReadings'] {
  if (positions.length === 0) return [{ readingId: id, position: null }];
  return positions.map((position) => ({ readingId: id, position }));
}

function refused(code: string, sentence: string): Refused {
  return { ok: false, code, sentence };
}
