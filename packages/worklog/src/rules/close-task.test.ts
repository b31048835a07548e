import { describe, expect, it } from 'vitest';
import type { Reading } from '../model';
import { taskIdOf } from '../task-id-of';
import { carryOver, drop, take } from '../testing/asks';
import {
  CANCELLED,
  close,
  gist,
  LEAK,
  NUTS,
  OK,
  openBay,
  PAD_FL,
  rulesOf,
  WHEEL,
  WORN,
} from '../testing/bay';
import { JO, KAI, MIA } from '../testing/people';

describe('decide: closing', () => {
  it('needs neither taking nor starting', () => {
    const bay = openBay();
    expect(gist(bay.act(close(NUTS, [OK], [PAD_FL]), MIA))).toBe('done');
    expect(bay.task(NUTS)).toMatchObject({ state: 'done', doneBy: MIA, findings: [OK], readings: [PAD_FL] });
  });

  it('adds what a second person found, flagged, and leaves the first as the one who did it', () => {
    const bay = openBay();
    bay.act(close(NUTS, [OK]), MIA);
    expect(bay.act(close(NUTS, [WORN], [PAD_FL]), KAI)).toMatchObject({
      entries: [{ flags: [{ code: 'alsoDoneBy', personId: MIA }] }],
    });
    const both = { doneBy: MIA, alsoDoneBy: [KAI], findings: [OK, WORN], readings: [PAD_FL] };
    expect(bay.task(NUTS)).toMatchObject(both);
  });

  it('lets the same person add a finding without a flag', () => {
    const bay = openBay();
    bay.act(close(NUTS, [OK]), MIA);
    expect(gist(bay.act(close(NUTS, [WORN]), MIA))).toBe('done');
    expect(bay.task(NUTS)).toMatchObject({ doneBy: MIA, alsoDoneBy: [], findings: [OK, WORN] });
  });

  it.each([
    ['held by another', take, rulesOf(), 'done +heldByAnother'],
    ['carried over', carryOver('no time'), rulesOf(), 'done +afterCarryOver'],
    ['not needed', drop('not on this car'), rulesOf(), 'done +afterNotNeeded'],
    ['held by another at a cancelled service', take, CANCELLED, 'done +heldByAnother +serviceCancelled'],
  ] as const)('is kept and flagged when the task was %s', (_, first, rules, expected) => {
    const bay = openBay();
    bay.act(first, MIA);
    expect(gist(bay.act(close(NUTS), KAI, rules))).toBe(expected);
    expect(bay.task(NUTS)).toMatchObject({ state: 'done', doneBy: KAI, holder: null });
  });

  it('names each reading that is missing, by its place', () => {
    const asked = ['FL', 'FR'].map((position) => ({ readingId: 'pad', position }));
    const outcome = openBay().act(close(NUTS, [], [PAD_FL]), MIA, rulesOf({ requiredReadings: asked }));
    expect(outcome).toMatchObject({
      entries: [{ flags: [{ code: 'readingMissing', readingId: 'pad', position: 'FR' }] }],
    });
  });

  it('takes a reading of zero as given', () => {
    const zero: Reading = { readingId: 'play', position: null, value: 0 };
    const rules = rulesOf({ requiredReadings: [{ readingId: 'play', position: null }] });
    expect(gist(openBay().act(close(NUTS, [], [zero]), MIA, rules))).toBe('done');
  });

  it('is kept and flagged when the card or snag is not known', () => {
    expect(gist(openBay().act(close(NUTS, [OK]), MIA, null))).toBe('done +unknownTask');
    expect(gist(openBay().act(close(LEAK, [OK]), MIA))).toBe('done +unknownTask');
  });

  it('opens again what must be done after it, if that was done before', () => {
    const bay = openBay();
    const rules = rulesOf({ reopens: [taskIdOf(NUTS)] });
    bay.act(close(NUTS), MIA);
    expect(gist(bay.act(close(WHEEL), KAI, rules))).toBe('done, reopened');
    expect(bay.task(NUTS)).toMatchObject({ state: 'open', doneBy: null, round: 2 });
    expect(bay.log.at(-1)?.body).toMatchObject({ because: taskIdOf(WHEEL) });
    bay.act(close(NUTS), MIA);
    expect(gist(bay.act(close(WHEEL), JO, rules))).toBe('done +alsoDoneBy');
    expect(bay.task(NUTS).state).toBe('done');
  });
});
