import type { LogEntry } from '../entry';
import {
  ACTION_VERSION,
  type Action,
  type ActionBody,
  type DeviceId,
  type PersonId,
  type TaskRef,
} from '../model';

/** An action that a log took, as it was pushed, and who had typed it. */
export interface EnteredAction {
  action: Action;
  enteredBy: PersonId;
}

/**
 * The action that wrote these entries, so that another server can decide it for itself: the log keeps what an action did,
 * not the action. All that its kind said comes back; only what is the same when left away (a signature that is said not to
 * be in ink) does not.
 *
 * @param entries those of one accepted action, in the order of the log
 * @param device which device pushed it, and in which place of its own order
 *
 * @example
 * actionOfEntries([claimed, started], device)?.action.kind // 'startTask'
 */
export function actionOfEntries(
  entries: readonly LogEntry[],
  device: { deviceId: DeviceId; deviceSeq: number },
): EnteredAction | null {
  // What was opened again along with it follows it; a start follows the claim it took first.
  const entry = entries.find(({ body }) => body.kind === 'started') ?? entries[0];
  const body = entry && bodyOf(entry.body);
  if (!entry || !body) return null;
  const { actionId, deviceTime, by, enteredBy } = entry;
  return { action: { ...body, ...device, actionId, deviceTime, version: ACTION_VERSION, by }, enteredBy };
}

/** Of kinds whose entry says the task alone. */
const PLAIN = { claimed: 'takeTask', released: 'releaseTask', started: 'startTask' } as const;
/** Of kinds whose entry says the task and why. */
const REASONED = { carriedOver: 'carryOverTask', dropped: 'dropTask', reopened: 'reopenTask' } as const;

/** Null for what no action begins with: work that was opened again because of other work. */
function bodyOf(body: LogEntry['body']): ActionBody | null {
  switch (body.kind) {
    case 'claimed':
    case 'released':
    case 'started':
      return { kind: PLAIN[body.kind], args: { task: body.task } };
    case 'carriedOver':
    case 'dropped':
      return reasoned(REASONED[body.kind], body.task, body.reason);
    case 'reopened':
      return body.because === null ? reasoned(REASONED.reopened, body.task, body.reason) : null;
    case 'done': {
      const { task, findings, readings } = body;
      return { kind: 'closeTask', args: { task, findings, readings } };
    }
    case 'signed': {
      const { kind: _, ...args } = body;
      return { kind: 'signTask', args };
    }
    case 'undone':
      return { kind: 'undo', args: { actionId: body.actionId } };
    case 'snagRaised': {
      const { kind: _, ...args } = body;
      return { kind: 'raiseSnag', args };
    }
    case 'stageConfirmed': {
      const { kind: _, ...args } = body;
      return { kind: 'confirmStage', args };
    }
    case 'timeRecorded': {
      const { kind: _, ...args } = body;
      return { kind: 'recordTime', args };
    }
    case 'factRecorded': {
      const { kind: _, ...args } = body;
      return { kind: 'recordFact', args };
    }
  }
}

function reasoned(kind: (typeof REASONED)[keyof typeof REASONED], task: TaskRef, reason: string): ActionBody {
  return { kind, args: { task, reason } };
}
