import { describe, expect, it } from 'vitest';
import { carryOver, drop, take } from '../testing/asks';
import { gist, NUTS, openBay } from '../testing/bay';
import { KAI, MANAGER, MIA } from '../testing/people';

describe('decide: carrying over and dropping', () => {
  it.each([
    [carryOver, 'carriedOver', 'carriedOver'],
    [drop, 'dropped', 'notNeeded'],
  ] as const)('needs a reason and closes the task (%#)', (leave, entry, state) => {
    const bay = openBay();
    expect(gist(bay.act(leave('  '), MIA))).toBe('refused reasonMissing');
    expect(gist(bay.act(leave('no time'), MIA))).toBe(entry);
    expect(bay.task(NUTS)).toMatchObject({ state, reason: 'no time', holder: null });
    expect(bay.act(take, KAI)).toEqual({ status: 'refused', refusal: { code: 'notOpen', state } });
  });

  it('leaves what another holds to them and to someone who may manage', () => {
    const bay = openBay();
    bay.act(take, MIA);
    expect(gist(bay.act(carryOver('no time'), KAI))).toBe('refused heldByAnother');
    expect(gist(bay.act(drop('no time'), KAI))).toBe('refused heldByAnother');
    expect(gist(bay.act(drop('not needed'), MANAGER))).toBe('dropped');
  });
});
