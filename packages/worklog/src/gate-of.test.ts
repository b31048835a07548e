import { describe, expect, it } from 'vitest';
import type { CarFact, FactPlace } from './car-fact';
import { gateOf } from './gate-of';
import { undo } from './testing/asks';
import { FACT, openBay } from './testing/bay';
import { KAI, MIA } from './testing/people';

const AT_B: FactPlace = { kind: 'service', serviceId: 'B' };
const CHECKED: CarFact = { kind: 'gateChecked', checks: ['onStands', 'engineOff'] };
const REFUELLED: CarFact = { kind: 'gateOpened', because: 'refuelled' };

function say(fact: CarFact, factId: string, at: FactPlace = AT_B) {
  return { kind: 'recordFact', args: { ...FACT.args, factId, at, fact } } as const;
}
const gateAt = (bay: ReturnType<typeof openBay>, serviceId = 'B', entryId = 'car7') =>
  gateOf(bay.state.facts.values(), entryId, serviceId);

describe('gateOf', () => {
  it('is not checked to begin with, and neither by a fact of another kind', () => {
    const bay = openBay();
    expect(gateAt(bay)).toEqual({ kind: 'notChecked' });
    bay.act(say(FACT.args.fact, 'f1'), MIA);
    expect(gateAt(bay)).toEqual({ kind: 'notChecked' });
  });

  it('says who checked what, at this service of this car only', () => {
    const bay = openBay();
    bay.act(say(CHECKED, 'f1'), MIA);
    expect(gateAt(bay)).toEqual({
      kind: 'checked',
      factId: 'f1',
      by: MIA,
      checks: ['onStands', 'engineOff'],
    });
    expect(gateAt(bay, 'A')).toEqual({ kind: 'notChecked' });
    expect(gateAt(bay, 'B', 'car9')).toEqual({ kind: 'notChecked' });
  });

  it('goes by what was said last', () => {
    const bay = openBay();
    bay.act(say(CHECKED, 'f1'), MIA);
    bay.act(say(REFUELLED, 'f2'), KAI);
    expect(gateAt(bay)).toEqual({ kind: 'opened', because: 'refuelled', by: KAI });
    bay.act(say(CHECKED, 'f3'), KAI);
    expect(gateAt(bay)).toMatchObject({ kind: 'checked', factId: 'f3' });
  });

  it('forgets what was taken back', () => {
    const bay = openBay();
    bay.act(say(CHECKED, 'f1'), MIA);
    bay.act(say(REFUELLED, 'f2'), MIA);
    bay.act(undo('a2'), MIA);
    expect(gateAt(bay)).toMatchObject({ kind: 'checked', factId: 'f1' });
  });
});
