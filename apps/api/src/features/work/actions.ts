import { actionArgs } from '@halfshaft/contract';
import { servicesOf } from '@halfshaft/itinerary';
import type { JobCard } from '@halfshaft/lifing';
import type { TeamTx } from '@halfshaft/store';
import {
  type Action,
  type PushedAction,
  type TaskRef,
  type TaskRules,
  upgradeAction,
} from '@halfshaft/worklog';
import { findCard, findEntry, findItinerary, findPersonName, findSnagEvent } from './data';

/** An action whose shape and every id in it have been checked, with what `decide` must know of its task. */
export type CheckedAction =
  | { ok: true; action: Action; rules: TaskRules | null }
  | { ok: false; code: string; sentence: string };

const GONE = 'That job is not on the list of this event. Look at the list again.';

/**
 * Looks at one pushed action: version, kind, arguments, and that every id in it is of this team and this event. An id of
 * another team gets the same answer as one that never existed. An unknown version or kind is left to `decide`, which
 * names it.
 */
export async function checkAction(tx: TeamTx, eventId: string, pushed: PushedAction): Promise<CheckedAction> {
  const upgrade = upgradeAction(pushed);
  if (!upgrade.ok) return { ok: true, action: pushed as Action, rules: null };
  const shape = actionArgs[upgrade.action.kind].safeParse(upgrade.action.args);
  if (!shape.success) {
    const first = shape.error.issues[0];
    const where = first?.path.join('.') ?? '';
    return refused('malformed', `What was sent is not complete (${where}): ${first?.message ?? 'unknown'}`);
  }
  const action = { ...upgrade.action, args: shape.data } as Action;
  if (!(await findPersonName(tx, action.by))) {
    return refused('unknownPerson', 'That person is not in this team. Choose who did it again.');
  }
  return checkIds(tx, eventId, action);
}

async function checkIds(tx: TeamTx, eventId: string, action: Action): Promise<CheckedAction> {
  switch (action.kind) {
    case 'undo':
      return { ok: true, action, rules: null };
    case 'raiseSnag':
      return checkSnag(tx, eventId, action);
    case 'confirmStage':
      return checkStage(tx, eventId, action);
    default:
      return checkTask(tx, eventId, action, action.args.task);
  }
}

async function checkSnag(
  tx: TeamTx,
  eventId: string,
  action: Extract<Action, { kind: 'raiseSnag' }>,
): Promise<CheckedAction> {
  const entry = await findEntry(tx, action.args.entryId);
  const snagEvent = await findSnagEvent(tx, action.args.snagId);
  if (entry?.eventId !== eventId || (snagEvent !== null && snagEvent !== eventId)) {
    return refused('unknownEntry', 'That car is not entered in this event. Choose the car again.');
  }
  return { ok: true, action, rules: null };
}

async function checkStage(
  tx: TeamTx,
  eventId: string,
  action: Extract<Action, { kind: 'confirmStage' }>,
): Promise<CheckedAction> {
  const entry = await findEntry(tx, action.args.entryId);
  const version = await findItinerary(tx, eventId);
  const stands = version?.itinerary.points.some(
    (point) => point.kind === 'stage' && point.id === action.args.stageId,
  );
  if (entry?.eventId !== eventId || !stands) {
    return refused('unknownStage', 'That stage is not in the itinerary of this event. Choose it again.');
  }
  return { ok: true, action, rules: null };
}

async function checkTask(tx: TeamTx, eventId: string, action: Action, ref: TaskRef): Promise<CheckedAction> {
  const entry = await findEntry(tx, ref.entryId);
  if (entry?.eventId !== eventId) return refused('unknownTask', GONE);
  const version = await findItinerary(tx, eventId);
  const serviceStands =
    version !== null && servicesOf(version.itinerary).some((service) => service.id === ref.serviceId);
  if (ref.source.kind === 'snag') {
    if ((await findSnagEvent(tx, ref.source.snagId)) !== eventId) return refused('unknownTask', GONE);
    return {
      ok: true,
      action,
      rules: { needsSignature: false, requiredReadings: [], reopens: [], serviceStands },
    };
  }
  const card = await findCard(tx, ref.source.cardId);
  if (card?.carId !== entry.carId) return refused('unknownTask', GONE);
  return { ok: true, action, rules: { ...rulesOfCard(card), serviceStands } };
}

function rulesOfCard(card: JobCard): Omit<TaskRules, 'serviceStands'> {
  const required = card.readings.filter((reading) => reading.required);
  return {
    needsSignature: card.needsSignature,
    requiredReadings: required.flatMap(placesOf),
    reopens: [],
  };
}

function placesOf({ id, positions }: JobCard['readings'][number]): TaskRules['requiredReadings'] {
  if (positions.length === 0) return [{ readingId: id, position: null }];
  return positions.map((position) => ({ readingId: id, position }));
}

function refused(code: string, sentence: string): CheckedAction {
  return { ok: false, code, sentence };
}
