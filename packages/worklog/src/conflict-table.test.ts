import { describe, expect, it } from 'vitest';
import { conflictTable, type ExpectedOutcome } from './conflict-table';
import { ACTION_KINDS, type ActionBody, type ActionKind } from './model';
import { type Bay, close, FACT, gist, NUTS, openBay, rulesOf, SNAG, STAGE, TIME } from './testing/bay';
import { JO, KAI, MIA } from './testing/people';

const RULES = rulesOf({ needsSignature: true });

/** What must have happened before, so that the first action (by Mia) is accepted. */
const before: Partial<Record<ActionKind, (bay: Bay) => void>> = {
  releaseTask: (bay) => bay.act(bodyOf('takeTask', ''), MIA, RULES),
  reopenTask: (bay) => bay.act(bodyOf('closeTask', ''), MIA, RULES),
  signTask: (bay) => bay.act(bodyOf('closeTask', ''), JO, RULES),
  undo: (bay) => bay.act(bodyOf('takeTask', ''), MIA, RULES),
};

function bodyOf(kind: ActionKind, undoes: string): ActionBody {
  switch (kind) {
    case 'closeTask':
      return close(NUTS);
    case 'carryOverTask':
    case 'dropTask':
    case 'reopenTask':
      return { kind, args: { task: NUTS, reason: 'thread damaged' } };
    case 'raiseSnag':
      return SNAG;
    case 'confirmStage':
      return STAGE;
    case 'recordTime':
      return TIME;
    case 'recordFact':
      return FACT;
    case 'undo':
      return { kind, args: { actionId: undoes } };
    default:
      return { kind, args: { task: NUTS } };
  }
}

/** The first action by Mia is accepted, then the second comes. */
function secondOutcome(first: ActionKind, second: ActionKind, by: string): string {
  const bay = openBay();
  const prepare = before[first];
  prepare?.(bay);
  const firstId = prepare ? 'a2' : 'a1';
  const accepted = bay.act(bodyOf(first, 'a1'), MIA, RULES);
  expect(accepted.status, `first ${first}`).toBe('accepted');
  return gist(bay.act(bodyOf(second, firstId), by, RULES));
}

function gistOf(expected: ExpectedOutcome): string {
  if ('refused' in expected) return `refused ${expected.refused}`;
  return [expected.entries.join(', '), ...expected.flags.map((flag) => `+${flag}`)].join(' ');
}

describe('conflictTable', () => {
  it('has a row and a column for every kind of action', () => {
    expect(Object.keys(conflictTable).sort()).toEqual([...ACTION_KINDS].sort());
    for (const row of Object.values(conflictTable)) {
      expect(Object.keys(row).sort()).toEqual([...ACTION_KINDS].sort());
    }
  });

  for (const first of ACTION_KINDS) {
    it(`says what becomes of every second action after ${first}`, () => {
      const said = ACTION_KINDS.map((second) => [
        second,
        gistOf(conflictTable[first][second].byAnother),
        gistOf(conflictTable[first][second].bySame),
      ]);
      const happened = ACTION_KINDS.map((second) => [
        second,
        secondOutcome(first, second, KAI),
        secondOutcome(first, second, MIA),
      ]);
      expect(happened).toEqual(said);
    });
  }
});
