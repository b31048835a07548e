import { describe, expect, it } from 'vitest';
import { FINISH, openBay, START, TIME } from './testing/bay';
import { KAI, MIA } from './testing/people';
import { finishesOf, timesOf } from './times-of';

describe('timesOf', () => {
  it('gives the last time recorded at each control, of one car only', () => {
    const bay = openBay();
    bay.act(TIME, MIA);
    bay.act({ ...TIME, args: { ...TIME.args, writtenAt: 47_220 } }, KAI);
    bay.act({ ...TIME, args: { ...TIME.args, entryId: 'car8', writtenAt: 48_000 } }, KAI);
    const times = timesOf(bay.state.times.values(), 'car7');
    expect([...times]).toMatchObject([['TC4A', { writtenAt: 47_220, recordedBy: KAI }]]);
  });

  it('keeps the start of a stage and its finish apart, also when the finish is taken back', () => {
    const bay = openBay();
    bay.act(START, MIA);
    bay.act(FINISH, MIA);
    const read = () => [
      timesOf(bay.state.times.values(), 'car7'),
      finishesOf(bay.state.times.values(), 'car7'),
    ];
    expect(read().map((times) => times.get('SS4')?.writtenAt)).toEqual([47_340, 47_820]);
    bay.act({ kind: 'undo', args: { actionId: 'a2' } }, MIA);
    expect(read().map((times) => times.get('SS4')?.writtenAt)).toEqual([47_340, undefined]);
  });
});
