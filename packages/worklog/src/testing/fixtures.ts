import fc from 'fast-check';
import type { ActionBody, Doer, TaskRef, TaskRules } from '../model';
import { taskIdOf } from '../task-id-of';
import { FACT, FINISH, LEAK, NUTS, PAD_FL, rulesOf, SNAG, STAGE, START, TIME, WHEEL } from './bay';
import { doerOf, JO, KAI, MIA } from './people';

/** One thing somebody asks for: what, who, and what the caller knows of the task. */
export interface Step {
  body: ActionBody;
  doer: Doer;
  rules: TaskRules | null;
}

const TASKS: readonly TaskRef[] = [NUTS, WHEEL, LEAK];

const doer = fc
  .record({
    personId: fc.constantFrom(MIA, KAI, JO),
    typedBy: fc.constantFrom(null, null, JO),
    mayManage: fc.constantFrom(false, false, true),
    revokedAt: fc.constantFrom(null, null, null, null, null, 500, 2_000),
  })
  .map(({ personId, typedBy, mayManage, revokedAt }) =>
    doerOf(personId, { enteredBy: typedBy ?? personId, mayManage, revokedAt }),
  );

const rules = fc.oneof(
  {
    weight: 12,
    arbitrary: fc
      .record({ needsSignature: fc.boolean(), serviceStands: fc.constantFrom(true, true, true, false) })
      .map((some) => rulesOf(some)),
  },
  { weight: 1, arbitrary: fc.constant(null) },
);

/** Findings carry the number of their step, so that each can be looked for later. */
function bodyOf(step: number): fc.Arbitrary<ActionBody> {
  const task = fc.constantFrom(...TASKS);
  const reason = fc.constantFrom('no time', 'looks wrong', '');
  const onTask = <K extends ActionBody['kind']>(kind: K) =>
    task.map((ref) => ({ kind, args: { task: ref } }));
  const finding = { lookId: null, position: null, grade: 'watch', words: `finding of a${step}` } as const;
  const reading = { ...PAD_FL, readingId: `reading of a${step}` };
  const because = <K extends ActionBody['kind']>(kind: K) =>
    fc.record({ task, reason }).map((args) => ({ kind, args }));
  return fc.oneof(
    { weight: 3, arbitrary: onTask('takeTask') },
    { weight: 1, arbitrary: onTask('releaseTask') },
    { weight: 2, arbitrary: onTask('startTask') },
    {
      weight: 4,
      arbitrary: task.map((ref) => ({
        kind: 'closeTask' as const,
        args: { task: ref, findings: [finding], readings: [reading] },
      })),
    },
    { weight: 1, arbitrary: because('carryOverTask') },
    { weight: 1, arbitrary: because('dropTask') },
    { weight: 2, arbitrary: because('reopenTask') },
    { weight: 3, arbitrary: onTask('signTask') },
    {
      weight: 1,
      arbitrary: task.map((ref) => ({ kind: 'signTask' as const, args: { task: ref, onPaper: true } })),
    },
    {
      weight: 1,
      arbitrary: task.map((ref) => ({ kind: 'signTask' as const, args: { task: ref, byInitials: true } })),
    },
    {
      weight: 2,
      arbitrary: fc.boolean().map((urgent) => ({
        ...SNAG,
        args: { ...SNAG.args, urgent, words: `snag of a${step}` },
      })),
    },
    {
      weight: 1,
      arbitrary: fc.boolean().map((driven) => ({ ...STAGE, args: { ...STAGE.args, driven } })),
    },
    {
      weight: 1,
      arbitrary: fc
        .tuple(fc.constantFrom(TIME, START, FINISH), fc.integer({ min: 0, max: 9 }))
        .map(([time, minutes]) => ({ ...time, args: { ...time.args, writtenAt: 47_160 + minutes * 60 } })),
    },
    {
      weight: 2,
      arbitrary: fc.constantFrom('landed', 'hit').map((factId) => ({
        ...FACT,
        args: { ...FACT.args, factId, fact: { ...FACT.args.fact, words: `fact of a${step}` } },
      })),
    },
    {
      weight: 4,
      arbitrary: fc
        .integer({ min: 1, max: 4 })
        .map((back) => ({ kind: 'undo' as const, args: { actionId: `a${step - back}` } })),
    },
  );
}

/** Several people at three tasks (wheel off opens the nuts again), one snag, one stage and one control. */
export const randomSteps: fc.Arbitrary<Step[]> = fc
  .integer({ min: 1, max: 30 })
  .chain((length) => fc.tuple(...Array.from({ length }, (_, index) => stepOf(index + 1))));

function stepOf(step: number): fc.Arbitrary<Step> {
  return fc.record({ body: bodyOf(step), doer, rules }).map((made) => ({
    ...made,
    rules: made.rules && { ...made.rules, reopens: reopensOf(made.body) },
  }));
}

function reopensOf(body: ActionBody): string[] {
  return 'task' in body.args && body.args.task === WHEEL ? [taskIdOf(NUTS), taskIdOf(LEAK)] : [];
}
