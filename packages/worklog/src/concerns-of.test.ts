import { describe, expect, it } from 'vitest';
import { concernInWords } from './concern-in-words';
import { concernsOf } from './concerns-of';
import { conflictTable } from './conflict-table';
import type { LogEntry } from './entry';
import type { EntryNames } from './entry-in-words';
import { flagInWords } from './flag-in-words';
import { ACTION_KINDS, type ActionBody, type ActionKind, type Doer } from './model';
import { refusalInWords } from './refusal-in-words';
import type { WorkState } from './state';
import { type Bay, close, FACT, NUTS, openBay, rulesOf, SNAG, STAGE, TIME } from './testing/bay';
import { doerOf, JO, KAI, MANAGER, MIA, nameOf } from './testing/people';

const RULES = rulesOf({ needsSignature: true });
const NAMES: EntryNames = {
  person: nameOf,
  task: () => 'Wheel nuts',
  card: () => 'Wheel nuts',
  service: (id) => `Service ${id}`,
  stage: (id) => id,
  control: (id) => id,
  clock: () => '13:06',
  reading: (id) => id,
};

const before: Partial<Record<ActionKind, (bay: Bay) => void>> = {
  releaseTask: (bay) => bay.act(bodyOf('takeTask', '', 1), MIA, RULES),
  reopenTask: (bay) => bay.act(bodyOf('closeTask', '', 1), MIA, RULES),
  signTask: (bay) => bay.act(bodyOf('closeTask', '', 1), JO, RULES),
  undo: (bay) => bay.act(bodyOf('takeTask', '', 1), MIA, RULES),
};

/** The second person says something else of a stage and a control than the first. */
function bodyOf(kind: ActionKind, undoes: string, person: 1 | 2): ActionBody {
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
      return { ...STAGE, args: { ...STAGE.args, driven: person === 1 } };
    case 'recordTime':
      return { ...TIME, args: { ...TIME.args, writtenAt: TIME.args.writtenAt + person * 60 } };
    case 'recordFact':
      return FACT;
    case 'undo':
      return { kind, args: { actionId: undoes } };
    default:
      return { kind, args: { task: NUTS } };
  }
}

interface Told {
  /** Each sentence the author of the second action reads; empty when nothing stands against it. */
  author: string[];
  /** Each sentence the author of the first reads. */
  first: string[];
  codes: string[];
  /** True when the first person held or had done the work before, and no longer so after. */
  tookFromFirst: boolean;
  /** Whom the flags name. */
  flagged: string[];
}

/** Mia's action is accepted, then the other person's comes. */
function play(first: ActionKind, second: ActionKind, doer: Doer): Told {
  const bay = openBay();
  const prepare = before[first];
  prepare?.(bay);
  const firstId = prepare ? 'a2' : 'a1';
  expect(bay.act(bodyOf(first, 'a1', 1), MIA, RULES).status, first).toBe('accepted');
  const state = bay.state;
  const known = bay.log.length;
  const outcome = bay.act(bodyOf(second, firstId, 2), doer, RULES);
  if (outcome.status === 'refused') {
    const author = [refusalInWords(outcome.refusal, nameOf)];
    return { author, first: [], codes: [], tookFromFirst: false, flagged: [] };
  }
  const entries = bay.log.slice(known);
  const flags = entries.flatMap((entry) => entry.flags);
  const concerns = entries.flatMap((entry) => toldTo(MIA, state, entry));
  return {
    author: flags.map((flag) => flagInWords(flag, nameOf, String)),
    first: concerns.map(({ sentence }) => sentence),
    codes: concerns.map(({ code }) => code),
    tookFromFirst: isTakenFrom(MIA, state, bay.state),
    flagged: flags.flatMap((flag) => ('personId' in flag ? [flag.personId] : [])),
  };
}

function toldTo(personId: string, state: WorkState, entry: LogEntry) {
  return concernsOf(state, entry)
    .filter((concern) => concern.personId === personId)
    .map(({ code }) => ({ code, sentence: concernInWords(code, entry, NAMES) }));
}

function isTakenFrom(person: string, one: WorkState, other: WorkState): boolean {
  return [...one.tasks.values()].some((task) => {
    const after = other.tasks.get(task.id);
    const held = task.holder === person && after?.holder !== person;
    return held || (task.doneBy === person && after?.doneBy !== person);
  });
}

const PAIRS = ACTION_KINDS.flatMap((first) => ACTION_KINDS.map((second) => [first, second] as const));
const SENTENCE = /^[A-Z].* .*\.$/;

describe('both sides of every pair of actions', () => {
  it.each(PAIRS)('%s by one, then %s by another: each is told what concerns them', (first, second) => {
    for (const doer of [doerOf(KAI), MANAGER]) {
      const told = play(first, second, doer);
      // Whoever lost something, and whoever is named beside a fact, reads a sentence.
      if (told.tookFromFirst || told.flagged.includes(MIA)) expect(told.first).not.toEqual([]);
      for (const sentence of told.first) expect(sentence).toMatch(SENTENCE);
      for (const words of [...told.first, ...told.author])
        expect(words).not.toMatch(/\bmia\b|\bkai\b|undefined/);
    }
    const expected = conflictTable[first][second].byAnother;
    const { author } = play(first, second, doerOf(KAI));
    if ('refused' in expected) expect(author[0]).toMatch(SENTENCE);
    else expect(author).toHaveLength(expected.flags.length);
  });

  it('tells the first exactly where the second touched what was theirs', () => {
    const told = PAIRS.flatMap(([first, second]) => {
      const { codes } = play(first, second, doerOf(KAI));
      return codes.map((code) => `${first}, ${second}: ${code}`);
    });
    expect(told).toEqual([
      'takeTask, closeTask: closedWhatYouHold',
      'startTask, closeTask: closedWhatYouHold',
      'closeTask, closeTask: closedToo',
      'closeTask, reopenTask: reopenedYours',
      'carryOverTask, closeTask: closedWhatYouLeft',
      'dropTask, closeTask: closedWhatYouLeft',
      'raiseSnag, raiseSnag: raisedToo',
      'confirmStage, confirmStage: saidOtherwise',
      'recordTime, recordTime: saidOtherwise',
      'recordFact, recordFact: recordedToo',
    ]);
  });

  it('tells the holder what a manager did for them', () => {
    const told = (['releaseTask', 'carryOverTask', 'dropTask', 'undo'] as const).map(
      (second) => play('takeTask', second, MANAGER).codes,
    );
    expect(told).toEqual([['letGoForYou'], ['leftWhatYouHold'], ['leftWhatYouHold'], ['tookBackYours']]);
  });
});

describe('concernsOf', () => {
  it('tells nobody of their own doing, nor what they typed for another', () => {
    const bay = openBay();
    bay.act({ kind: 'takeTask', args: { task: NUTS } }, MIA, RULES);
    const state = bay.state;
    bay.act(close(NUTS), doerOf(KAI, { enteredBy: MIA }), RULES);
    expect(bay.log.slice(-1).flatMap((entry) => concernsOf(state, entry))).toEqual([]);
  });

  it('tells whoever is said to have signed on another device, and nobody who signed on their own', () => {
    const told = ([MIA, KAI] as const).map((enteredBy) => {
      const bay = openBay();
      bay.act(close(NUTS), JO, RULES);
      const { state } = bay;
      const args = { task: NUTS, byInitials: true } as const;
      bay.act({ kind: 'signTask', args }, doerOf(KAI, { enteredBy }), RULES);
      return bay.log.slice(-1).flatMap((entry) => concernsOf(state, entry));
    });
    expect(told).toEqual([[{ personId: KAI, code: 'signedForYou' }], []]);
  });

  it('says what happened and what to do', () => {
    expect(play('takeTask', 'closeTask', doerOf(KAI)).first).toEqual([
      "Kai closed 'Wheel nuts' at Service B. You had it: leave it now, or look at what was done.",
    ]);
  });
});
