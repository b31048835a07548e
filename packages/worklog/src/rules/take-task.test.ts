import { describe, expect, it } from 'vitest';
import { start, take } from '../testing/asks';
import { gist, NUTS, openBay } from '../testing/bay';
import { doerOf, JO, KAI, MIA } from '../testing/people';

describe('decide: taking and starting', () => {
  it('gives a task to the first who asks and names them to the next', () => {
    const bay = openBay();
    expect(gist(bay.act(take, MIA))).toBe('claimed');
    expect(bay.act(take, KAI)).toEqual({
      status: 'refused',
      refusal: { code: 'heldByAnother', personId: MIA },
    });
    expect(bay.task(NUTS)).toMatchObject({ state: 'claimed', holder: MIA, changedSeq: 1, changedBy: MIA });
  });

  it('gives one of many takers the task, and writes one claimed entry', () => {
    const bay = openBay();
    for (let person = 1; person <= 20; person += 1) bay.act(take, `person ${person}`);
    expect(bay.log.map((entry) => entry.body.kind)).toEqual(['claimed']);
  });

  it('tells the holder who asks again that it is already theirs, and writes nothing', () => {
    const bay = openBay();
    bay.act(take, MIA);
    expect(gist(bay.act(take, MIA))).toBe('refused alreadyYours');
    expect(bay.log).toHaveLength(1);
  });

  it('takes what nobody holds when it is started', () => {
    const bay = openBay();
    expect(gist(bay.act(start, MIA))).toBe('claimed, started');
    expect(bay.task(NUTS)).toMatchObject({ state: 'underWay', holder: MIA });
    expect(gist(bay.act(start, MIA))).toBe('refused alreadyYours');
  });

  it('does not let anyone start what another holds', () => {
    const bay = openBay();
    bay.act(take, MIA);
    expect(gist(bay.act(start, KAI))).toBe('refused heldByAnother');
  });

  it('gives a scribe’s entry to the person it is for', () => {
    const bay = openBay();
    bay.act(take, doerOf(MIA, { enteredBy: JO }));
    expect(bay.log[0]).toMatchObject({ by: MIA, enteredBy: JO });
    expect(bay.task(NUTS).holder).toBe(MIA);
  });
});
