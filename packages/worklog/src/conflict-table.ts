import type { ActionKind, EntryKind, FlagCode } from './model';
import type { RefusalCode } from './refusal';

/** What becomes of the second action: the entries it writes and the flags on them, or the refusal's code. */
export type ExpectedOutcome = { entries: EntryKind[]; flags: FlagCode[] } | { refused: RefusalCode };

/** The second action by someone else, and by the person of the first. Neither may manage. */
interface Expected {
  byAnother: ExpectedOutcome;
  bySame: ExpectedOutcome;
}
type Row = Record<ActionKind, Expected>;

const both = (outcome: ExpectedOutcome): Expected => ({ byAnother: outcome, bySame: outcome });
const either = (byAnother: ExpectedOutcome, bySame: ExpectedOutcome): Expected => ({ byAnother, bySame });
const no = (refused: RefusalCode): ExpectedOutcome => ({ refused });
const yes = (...entries: EntryKind[]): ExpectedOutcome => ({ entries, flags: [] });
const flagged = (entry: EntryKind, ...flags: FlagCode[]): ExpectedOutcome => ({ entries: [entry], flags });

/** Facts about another thing never stand in each other's way; an action is taken back by its own person only. */
const elsewhere = {
  raiseSnag: both(yes('snagRaised')),
  confirmStage: both(yes('stageConfirmed')),
  recordTime: both(yes('timeRecorded')),
  recordFact: both(yes('factRecorded')),
  undo: either(no('notAllowed'), yes('undone')),
};

const whenOpen: Row = {
  takeTask: both(yes('claimed')),
  releaseTask: both(no('notHeld')),
  startTask: both(yes('claimed', 'started')),
  closeTask: both(yes('done')),
  carryOverTask: both(yes('carriedOver')),
  dropTask: both(yes('dropped')),
  reopenTask: both(no('notClosed')),
  signTask: both(no('notAwaitingSignature')),
  ...elsewhere,
};

const whenTakenByFirst: Row = {
  takeTask: either(no('heldByAnother'), no('alreadyYours')),
  releaseTask: either(no('heldByAnother'), yes('released')),
  startTask: either(no('heldByAnother'), yes('started')),
  closeTask: either(flagged('done', 'heldByAnother'), yes('done')),
  carryOverTask: either(no('heldByAnother'), yes('carriedOver')),
  dropTask: either(no('heldByAnother'), yes('dropped')),
  reopenTask: both(no('notClosed')),
  signTask: both(no('notAwaitingSignature')),
  ...elsewhere,
};

const whenStartedByFirst: Row = {
  ...whenTakenByFirst,
  startTask: either(no('heldByAnother'), no('alreadyYours')),
};

const whenDoneByFirst: Row = {
  takeTask: both(no('alreadyDone')),
  releaseTask: both(no('notHeld')),
  startTask: both(no('alreadyDone')),
  closeTask: either(flagged('done', 'alsoDoneBy'), yes('done')),
  carryOverTask: both(no('alreadyDone')),
  dropTask: both(no('alreadyDone')),
  reopenTask: both(yes('reopened')),
  signTask: either(yes('signed'), no('needsAnotherPerson')),
  ...elsewhere,
};

/** Done by a third person before, so neither of the two had a hand in it. */
const whenSignedByFirst: Row = {
  ...whenDoneByFirst,
  closeTask: both(flagged('done', 'alsoDoneBy')),
  signTask: both(no('alreadySigned')),
};

const whenCarriedOver: Row = {
  takeTask: both(no('notOpen')),
  releaseTask: both(no('notHeld')),
  startTask: both(no('notOpen')),
  closeTask: both(flagged('done', 'afterCarryOver')),
  carryOverTask: both(no('notOpen')),
  dropTask: both(no('notOpen')),
  reopenTask: both(yes('reopened')),
  signTask: both(no('notAwaitingSignature')),
  ...elsewhere,
};

const whenDropped: Row = { ...whenCarriedOver, closeTask: both(flagged('done', 'afterNotNeeded')) };

/**
 * What the log makes of two people's (or one person's two) actions on the same task, snag, stage, control and fact: rows are the
 * action accepted first, columns the second. The task asks for a signature and all its readings are given; its
 * service stands. Before the first action the task is in the state that lets it be accepted: held by the first person
 * (release), closed by the first person (open again), closed by a third (sign), taken by the first person (undo).
 * An undo as second action takes back the first.
 */
export const conflictTable: Record<ActionKind, Row> = {
  takeTask: whenTakenByFirst,
  releaseTask: whenOpen,
  startTask: whenStartedByFirst,
  closeTask: whenDoneByFirst,
  carryOverTask: whenCarriedOver,
  dropTask: whenDropped,
  reopenTask: whenOpen,
  signTask: whenSignedByFirst,
  raiseSnag: { ...whenOpen, raiseSnag: either(flagged('snagRaised', 'alsoRaisedBy'), yes('snagRaised')) },
  confirmStage: whenOpen,
  recordTime: whenOpen,
  recordFact: {
    ...whenOpen,
    recordFact: either(flagged('factRecorded', 'alsoRecordedBy'), yes('factRecorded')),
  },
  undo: { ...whenOpen, undo: both(no('nothingToUndo')) },
};
