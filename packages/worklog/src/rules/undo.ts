import type { RecordedFact } from '../car-fact';
import type { ActionId, Doer, PersonId, Snag } from '../model';
import { stageKeyOf } from '../stage-key-of';
import type { ActionRecord, WorkState } from '../state';
import { timeKeyOf, timeRefOf } from '../time-key-of';
import { type Ruling, refuse } from './ruling';

/**
 * Taking an action back: by who did it, who typed it (a scribe's slip), or someone who may manage, and only while
 * nothing it touched has changed since. An undo cannot itself be undone: do the thing again instead.
 */
export function ruleOnUndo(state: WorkState, actionId: ActionId, doer: Doer): Ruling {
  const record = state.actions.get(actionId);
  if (!record || record.undone || record.kinds.includes('undone')) return refuse({ code: 'nothingToUndo' });
  const own = record.by === doer.personId || record.enteredBy === doer.personId;
  if (!own && !doer.mayManage) return refuse({ code: 'notAllowed' });
  const changer = whoChangedSince(state, record);
  if (changer !== null) return refuse({ code: 'changedSince', personId: changer });
  return {
    entries: [
      {
        body: {
          kind: 'undone',
          actionId,
          doneBy: record.by,
          kinds: record.kinds,
          tasks: record.tasks.map((touched) => touched.before),
          snags: snagsBefore(state, record),
          stages: record.stages.map(({ entryId, stageId, before }) => ({ entryId, stageId, before })),
          times: (record.times ?? []).map((time) => ({ ...timeRefOf(time), before: time.before })),
          facts: factsBefore(state, record),
        },
      },
    ],
  };
}

/** Who last changed something the action touched, after it; null when nothing changed. */
function whoChangedSince(state: WorkState, record: ActionRecord): PersonId | null {
  const parts = [
    ...record.tasks.map(({ before, seq }) => ({ seq, now: state.tasks.get(before.id) })),
    ...record.snags.map(({ snagId, seq }) => ({ seq, now: state.snags.get(snagId) })),
    ...record.stages.map((stage) => ({ seq: stage.seq, now: state.stages.get(stageKeyOf(stage)) })),
    ...(record.times ?? []).map((time) => ({ seq: time.seq, now: state.times.get(timeKeyOf(time)) })),
    ...(record.facts ?? []).map(({ factId, seq }) => ({ seq, now: state.facts.get(factId) })),
  ];
  const changed = parts.find(({ seq, now }) => now?.changedSeq !== seq);
  return changed ? (changed.now?.changedBy ?? record.by) : null;
}

function snagsBefore(state: WorkState, record: ActionRecord): Snag[] {
  return record.snags.flatMap(({ snagId, before }) => {
    if (before) return [before];
    const raised = state.snags.get(snagId);
    return raised ? [{ ...raised, withdrawn: true }] : [];
  });
}

function factsBefore(state: WorkState, record: ActionRecord): RecordedFact[] {
  return (record.facts ?? []).flatMap(({ factId, before }) => {
    if (before) return [before];
    const recorded = state.facts.get(factId);
    return recorded ? [{ ...recorded, withdrawn: true }] : [];
  });
}
