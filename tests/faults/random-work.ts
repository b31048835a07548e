import { createHash } from 'node:crypto';
import { INCIDENT_CODES } from '@halfshaft/lifing';
import { ACTION_VERSION, type ActionBody, type FindingGrade } from '@halfshaft/worklog';
import { taskRef } from '../support/event';
import { type Chance, chanceFrom } from './chance';

/** Someone with a device of their own. */
export interface Worker {
  personId: string;
}

/** What the actions may speak of. */
export interface WorkPlace {
  entryId: string;
  cardIds: string[];
  workers: Worker[];
}

export type WorkAction = ReturnType<typeof stamped> & { worker: number };

const SERVICES = ['A', 'B'];
const STAGES = ['SS1', 'SS2', 'SS3'];
const GRADES: FindingGrade[] = ['ok', 'watch', 'needsWork', 'temporaryRepair'];
const TIMED = [
  { controlId: 'TC2A' },
  { controlId: 'TC2B' },
  { controlId: 'SS1' },
  { controlId: 'SS1', finish: true as const },
];
const SNAGS = 3;

/**
 * A random day in the bay: every kind of action, by several people, often on the same few jobs. The same seed gives the
 * same day for another place, whose ids differ only in what `place` says and in the ids of its actions and snags.
 */
export function randomWork(place: WorkPlace, seed: number, length: number, salt: string): WorkAction[] {
  const chance = chanceFrom(seed);
  const idOf = (what: string) => uuidFrom(`${salt} ${seed} ${what}`);
  return Array.from({ length }, (_, step) => {
    const worker = chance.whole(place.workers.length);
    const typedFor = chance.whole(6) === 0 ? chance.whole(place.workers.length) : worker;
    const body = randomBody(chance, place, step, idOf);
    const doer = body.kind === 'signTask' ? worker : typedFor;
    const by = place.workers[doer]?.personId ?? '';
    return { ...stamped(body, { actionId: idOf(`action ${step}`), worker, step, by }), worker };
  });
}

function stamped(
  body: ActionBody,
  { actionId, worker, step, by }: { actionId: string; worker: number; step: number; by: string },
) {
  return {
    ...body,
    actionId,
    deviceId: `device ${worker}`,
    deviceSeq: step + 1,
    deviceTime: 1_780_000_000_000 + step * 1000,
    version: ACTION_VERSION,
    by,
  };
}

/** `idOf('action 7')` is the id of the action of step 7; `idOf('snag 2')` and `idOf('fact 2')` are any that stay the same. */
export function randomBody(
  chance: Chance,
  place: WorkPlace,
  step: number,
  idOf: (what: string) => string,
): ActionBody {
  const { entryId } = place;
  const snagId = idOf(`snag ${chance.whole(SNAGS)}`);
  const ref = taskRef(entryId, chance.pick(place.cardIds), chance.pick(SERVICES));
  const task = chance.whole(4) === 0 ? { ...ref, source: { kind: 'snag' as const, snagId } } : ref;
  const reason = chance.pick(['no time left', 'looks wrong', '']);
  const kind = chance.pick([
    ...(['takeTask', 'takeTask', 'releaseTask', 'startTask', 'closeTask', 'closeTask', 'closeTask'] as const),
    ...(['carryOverTask', 'dropTask', 'reopenTask', 'signTask', 'signTask'] as const),
    ...([
      'raiseSnag',
      'raiseSnag',
      'confirmStage',
      'recordTime',
      'recordFact',
      'recordFact',
      'undo',
      'undo',
      'undo',
    ] as const),
  ]);
  switch (kind) {
    case 'closeTask': {
      const newPart = step % 2 === 0 ? { newPart: true as const } : {};
      const said = { grade: chance.pick(GRADES), words: `found at ${step}`, ...newPart };
      const finding = { lookId: null, position: 'FL', ...said };
      const reading = { readingId: 'pad', position: 'FL', value: chance.whole(200) - 20 };
      return { kind, args: { task, findings: [finding], readings: chance.whole(2) ? [reading] : [] } };
    }
    case 'carryOverTask':
    case 'dropTask':
    case 'reopenTask':
      return { kind, args: { task, reason } };
    case 'raiseSnag': {
      const words = `seen at ${step}: "oil" on the hub’s inner face`;
      return {
        kind,
        args: { snagId, entryId, serviceId: 'B', place: 'RR', words, urgent: chance.whole(2) === 0 },
      };
    }
    case 'confirmStage': {
      const conditions = { dust: chance.whole(1001) };
      return {
        kind,
        args: { entryId, stageId: chance.pick(STAGES), driven: chance.whole(3) > 0, conditions },
      };
    }
    case 'recordTime': {
      const writtenAt = 1_781_340_000 + chance.whole(10) * 60;
      const place = chance.pick(TIMED);
      return { kind, args: { entryId, ...place, writtenAt, heldMinutes: chance.whole(4) } };
    }
    case 'recordFact': {
      const fact = {
        kind: 'incident' as const,
        code: chance.pick(INCIDENT_CODES),
        place: 'RR',
        words: `met at ${step}`,
      };
      const at = { kind: 'road' as const, afterStageId: chance.pick(STAGES) };
      return { kind, args: { factId: idOf(`fact ${chance.whole(SNAGS)}`), entryId, at, fact } };
    }
    case 'undo':
      return { kind, args: { actionId: idOf(`action ${Math.max(0, step - 1 - chance.whole(4))}`) } };
    default:
      return { kind, args: { task } };
  }
}

/** A well-formed id that depends on the text alone. */
export function uuidFrom(text: string): string {
  const hex = createHash('sha256').update(text).digest('hex');
  return [
    hex.slice(0, 8),
    hex.slice(8, 12),
    `4${hex.slice(13, 16)}`,
    `8${hex.slice(17, 20)}`,
    hex.slice(20, 32),
  ].join('-');
}
