import { describe, expect, it } from 'vitest';
import { openBay, TIME } from './testing/bay';
import { KAI, MIA } from './testing/people';
import { timesOf } from './times-of';

describe('timesOf', () => {
  it('gives the last time recorded at each control, of one car only', () => {
    const bay = openBay();
    bay.act(TIME, MIA);
    bay.act({ ...TIME, args: { ...TIME.args, writtenAt: 47_220 } }, KAI);
    bay.act({ ...TIME, args: { ...TIME.args, entryId: 'car8', writtenAt: 48_000 } }, KAI);
    const times = timesOf(bay.state.times.values(), 'car7');
    expect([...times]).toMatchObject([['TC4A', { writtenAt: 47_220, recordedBy: KAI }]]);
  });
});
