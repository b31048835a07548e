import { applyAll } from '../apply';
import { decide } from '../decide';
import type { LogEntry } from '../entry';
import {
  ACTION_VERSION,
  type Action,
  type ActionBody,
  type Doer,
  type Finding,
  type Reading,
  type Task,
  type TaskRef,
  type TaskRules,
} from '../model';
import { numberEntries } from '../number-entries';
import type { Outcome } from '../refusal';
import { emptyState, type WorkState } from '../state';
import { taskOf } from '../task-of';
import { deepFreeze } from './deep-freeze';
import { doerOf } from './people';

export const NUTS: TaskRef = { entryId: 'car7', serviceId: 'B', source: { kind: 'card', cardId: 'nuts' } };
export const WHEEL: TaskRef = { entryId: 'car7', serviceId: 'B', source: { kind: 'card', cardId: 'wheel' } };
export const LEAK: TaskRef = { entryId: 'car7', serviceId: 'B', source: { kind: 'snag', snagId: 'leak' } };

export const OK: Finding = { lookId: null, position: 'FL', grade: 'ok', words: '' };
export const WORN: Finding = {
  lookId: 'pads',
  position: 'FR',
  grade: 'needsWork',
  words: 'worn to the plate',
};
export const PAD_FL: Reading = { readingId: 'pad', position: 'FL', value: 82 };

export const SNAG = {
  kind: 'raiseSnag',
  args: {
    snagId: 'leak',
    entryId: 'car7',
    serviceId: 'B',
    place: 'RR',
    words: 'oil on the hub',
    urgent: false,
  },
} as const satisfies ActionBody;
export const STAGE = {
  kind: 'confirmStage',
  args: { entryId: 'car7', stageId: 'SS3', driven: true, conditions: { dust: 400 } },
} as const satisfies ActionBody;

export const TIME = {
  kind: 'recordTime',
  args: { entryId: 'car7', controlId: 'TC4A', writtenAt: 47_160, heldMinutes: 0 },
} as const satisfies ActionBody;

/** The start and the finish of a stage. */
export const START = {
  kind: 'recordTime',
  args: { entryId: 'car7', controlId: 'SS4', writtenAt: 47_340, heldMinutes: 0 },
} as const satisfies ActionBody;
export const FINISH = {
  kind: 'recordTime',
  args: { entryId: 'car7', controlId: 'SS4', finish: true, writtenAt: 47_820, heldMinutes: 0 },
} as const satisfies ActionBody;

export const FACT = {
  kind: 'recordFact',
  args: {
    factId: 'landed',
    entryId: 'car7',
    at: { kind: 'road', afterStageId: 'SS3' },
    fact: { kind: 'incident', code: 'hardLanding', place: 'FL', words: 'bang over the crest' },
  },
} as const satisfies ActionBody;

export function rulesOf(more: Partial<TaskRules> = {}): TaskRules {
  return { needsSignature: false, requiredReadings: [], reopens: [], serviceStands: true, ...more };
}

export const SIGNED = rulesOf({ needsSignature: true });
export const CANCELLED = rulesOf({ serviceStands: false });

export function close(task: TaskRef, findings: Finding[] = [], readings: Reading[] = []): ActionBody {
  return { kind: 'closeTask', args: { task, findings, readings } };
}

export function actionOf(body: ActionBody, by: string, actionId: string, deviceTime = 1_000): Action {
  return {
    ...body,
    actionId,
    by,
    deviceId: `phone of ${by}`,
    deviceSeq: 1,
    deviceTime,
    version: ACTION_VERSION,
  };
}

/** One server's log and state: decides each action on a frozen state, numbers and applies what came of it. */
export interface Bay {
  state: WorkState;
  log: LogEntry[];
  /** Ids are `a1`, `a2` … in order of asking. */
  act: (body: ActionBody, doer: Doer | string, rules?: TaskRules | null) => Outcome;
  task: (ref: TaskRef) => Task;
}

export function openBay(): Bay {
  let asked = 0;
  const bay: Bay = {
    state: deepFreeze(emptyState),
    log: [],
    act(body, doer, rules = rulesOf()) {
      asked += 1;
      const who = typeof doer === 'string' ? doerOf(doer) : doer;
      const action = deepFreeze(actionOf(body, who.personId, `a${asked}`));
      const outcome = deepFreeze(decide(bay.state, action, who, rules));
      if (outcome.status === 'refused') return outcome;
      const entries = numberEntries(outcome.entries, bay.log.length + 1, 5_000 + asked);
      bay.log.push(...entries);
      bay.state = deepFreeze(applyAll(bay.state, entries));
      return outcome;
    },
    task: (ref) => taskOf(bay.state, ref, null),
  };
  return bay;
}

/** An outcome in few words, for comparing: the entries' kinds with their flags, or the refusal's code. */
export function gist(outcome: Outcome): string {
  if (outcome.status === 'refused') return `refused ${outcome.refusal.code}`;
  return outcome.entries
    .map((entry) => [entry.body.kind, ...entry.flags.map((flag) => `+${flag.code}`)].join(' '))
    .join(', ');
}
