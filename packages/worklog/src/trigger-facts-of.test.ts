import { describe, expect, it } from 'vitest';
import type { CarFact, FactPlace } from './car-fact';
import type { Finding } from './model';
import { repairsOf } from './repairs-of';
import { taskIdOf } from './task-id-of';
import { close, FACT, LEAK, NUTS, openBay, rulesOf, SNAG, WHEEL } from './testing/bay';
import { KAI, MIA } from './testing/people';
import { ROUTE } from './testing/route';
import { triggerFactsOf } from './trigger-facts-of';

const WIRE: Finding = {
  lookId: null,
  position: 'FL',
  grade: 'temporaryRepair',
  words: 'wire round the hanger',
};

const record = (fact: CarFact, factId: string, at: FactPlace = FACT.args.at) =>
  ({ kind: 'recordFact', args: { ...FACT.args, factId, at, fact } }) as const;
const factsIn = (bay: ReturnType<typeof openBay>) => triggerFactsOf(bay.state, ROUTE, 'car7');

describe('triggerFactsOf', () => {
  it('has incidents, new parts and cards done, in the order of the log and at their points', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    bay.act(close(WHEEL), MIA);
    bay.act(record({ kind: 'fitted', cardId: 'belt', position: null, words: '' }, 'belt'), KAI);
    expect(factsIn(bay)).toEqual([
      { kind: 'incident', code: 'hardLanding', pointIndex: 4 },
      { kind: 'done', cardId: 'wheel', pointIndex: 5 },
      { kind: 'fitted', cardId: 'belt', pointIndex: 4 },
    ]);
  });

  it('is not moved by a signature: what was done stands where it was closed', () => {
    const bay = openBay();
    const rules = rulesOf({ needsSignature: true });
    bay.act(close(NUTS), MIA, rules);
    bay.act(FACT, MIA);
    bay.act({ kind: 'signTask', args: { task: NUTS } }, KAI, rules);
    expect(factsIn(bay).map(({ kind }) => kind)).toEqual(['done', 'incident']);
  });

  it('leaves out what was taken back, of another car, or at a place that is gone', () => {
    const bay = openBay();
    bay.act(FACT, MIA);
    bay.act({ kind: 'undo', args: { actionId: 'a1' } }, MIA);
    bay.act({ ...FACT, args: { ...FACT.args, factId: 'theirs', entryId: 'car9' } }, MIA);
    const hit = { kind: 'incident', code: 'contact', place: null, words: '' } as const;
    bay.act(record(hit, 'gone', { kind: 'road', afterStageId: 'SS9' }), MIA);
    bay.act(record(hit, 'early', { kind: 'road', afterStageId: null }), MIA);
    expect(factsIn(bay)).toEqual([{ kind: 'incident', code: 'contact', pointIndex: 0 }]);
  });

  it('knows a temporary repair, and where it was made good', () => {
    const bay = openBay();
    bay.act(close({ ...NUTS, serviceId: 'A' }, [WIRE]), MIA);
    const repair = {
      kind: 'temporaryRepair',
      cardId: 'nuts',
      words: 'FL wire round the hanger',
      pointIndex: 2,
    };
    expect(factsIn(bay)).toContainEqual({ ...repair, madeGoodAt: null });
    const of = taskIdOf({ ...NUTS, serviceId: 'A' });
    bay.act(record({ kind: 'madeGood', of, words: '' }, 'good', { kind: 'service', serviceId: 'B' }), KAI);
    expect(factsIn(bay)).toContainEqual({ ...repair, madeGoodAt: 5 });
    bay.act({ kind: 'undo', args: { actionId: 'a2' } }, KAI);
    expect(factsIn(bay)).toContainEqual({ ...repair, madeGoodAt: null });
  });
});

describe('repairsOf', () => {
  it("has those of cards and of snags' repairs until each is made good", () => {
    const bay = openBay();
    bay.act(SNAG, MIA);
    bay.act(close(LEAK, [WIRE]), MIA);
    bay.act(close(NUTS, [WIRE]), MIA);
    bay.act(close(WHEEL), MIA);
    const open = () => repairsOf(bay.state, 'car7').map(({ task }) => task.id);
    expect(open()).toEqual([taskIdOf(LEAK), taskIdOf(NUTS)]);
    bay.act(record({ kind: 'madeGood', of: taskIdOf(LEAK), words: '' }, 'good'), MIA);
    expect(open()).toEqual([taskIdOf(NUTS)]);
    expect(repairsOf(bay.state, 'car9')).toEqual([]);
  });
});
