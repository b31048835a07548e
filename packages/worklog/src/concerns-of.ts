import type { EntryDraft } from './entry';
import type { PersonId } from './model';
import { stageKeyOf } from './stage-key-of';
import type { WorkState } from './state';
import { taskIdOf } from './task-id-of';
import { timeKeyOf } from './time-key-of';

/** How an entry touches what somebody else did. */
export type ConcernCode =
  | 'closedWhatYouHold'
  | 'closedToo'
  | 'closedWhatYouLeft'
  | 'letGoForYou'
  | 'leftWhatYouHold'
  | 'reopenedYours'
  | 'tookBackYours'
  | 'raisedToo'
  | 'recordedToo'
  | 'saidOtherwise'
  | 'signedForYou';

/** Somebody who must be told of an entry, beside its author. */
export interface Concern {
  personId: PersonId;
  code: ConcernCode;
}

/**
 * Whom an entry concerns beside who did it and who typed it: the other side of each conflict, so that nobody goes on with
 * work that another has closed, left or opened again; and whoever another's device or a paper says has signed.
 *
 * @param before the state right before the entry
 *
 * @example
 * concernsOf(state, closedByKai) // [{ personId: 'mia', code: 'closedWhatYouHold' }]
 */
export function concernsOf(before: WorkState, entry: EntryDraft): Concern[] {
  const { by, enteredBy, body } = entry;
  // By initials or in ink, which prove little: whose name it is must be able to say that it was not them.
  if (body.kind === 'signed') return by === enteredBy ? [] : [{ personId: by, code: 'signedForYou' }];
  return concernsIn(before, entry).filter(({ personId }) => personId !== by && personId !== enteredBy);
}

function concernsIn(before: WorkState, { body }: EntryDraft): Concern[] {
  switch (body.kind) {
    case 'done':
      return concernsOfDone(before, taskIdOf(body.task));
    case 'released':
      return [{ personId: body.heldBy, code: 'letGoForYou' }];
    case 'carriedOver':
    case 'dropped':
      return someone(before.tasks.get(taskIdOf(body.task))?.holder, 'leftWhatYouHold');
    case 'reopened': {
      const task = before.tasks.get(taskIdOf(body.task));
      const doers = [...(task?.doneBy ? [task.doneBy] : []), ...(task?.alsoDoneBy ?? [])];
      return doers.map((personId) => ({ personId, code: 'reopenedYours' }));
    }
    case 'undone':
      return [{ personId: body.doneBy, code: 'tookBackYours' }];
    case 'snagRaised': {
      const snag = before.snags.get(body.snagId);
      return snag?.withdrawn ? [] : someone(snag?.raisedBy, 'raisedToo');
    }
    case 'factRecorded': {
      const fact = before.facts.get(body.factId);
      return fact?.withdrawn ? [] : someone(fact?.recordedBy, 'recordedToo');
    }
    case 'stageConfirmed': {
      const stage = before.stages.get(stageKeyOf(body));
      return stage && stage.driven !== body.driven ? someone(stage.confirmedBy, 'saidOtherwise') : [];
    }
    case 'timeRecorded': {
      const time = before.times.get(timeKeyOf(body));
      const same = time?.writtenAt === body.writtenAt && time.heldMinutes === body.heldMinutes;
      return same ? [] : someone(time?.recordedBy, 'saidOtherwise');
    }
    default:
      return [];
  }
}

/** Closed: by one who held it, beside others who closed it, or after it was left. */
function concernsOfDone(before: WorkState, taskId: string): Concern[] {
  const task = before.tasks.get(taskId);
  if (!task) return [];
  if (task.doneBy !== null) {
    return [task.doneBy, ...task.alsoDoneBy].map((personId) => ({ personId, code: 'closedToo' }));
  }
  if (task.state === 'carriedOver' || task.state === 'notNeeded') {
    return someone(task.changedBy, 'closedWhatYouLeft');
  }
  return someone(task.holder, 'closedWhatYouHold');
}

function someone(personId: PersonId | null | undefined, code: ConcernCode): Concern[] {
  return personId ? [{ personId, code }] : [];
}
