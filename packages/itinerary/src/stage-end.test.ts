import { describe, expect, it } from 'vitest';
import { estimateStageEnd, type StageBlock } from './stage-end';

const BLOCK: StageBlock = {
  stageStartsAt: 1000,
  stageMetres: 16_000,
  roadMetres: 4000,
  nextControlAt: 4600,
  allowedSeconds: 3600,
  roadTimedFrom: 'stageStart',
};

describe('estimateStageEnd', () => {
  it('drives the stage at 80 km/h', () => {
    expect(estimateStageEnd(BLOCK)).toBe(1000 + 720);
  });

  it('leaves the road its share when time is short', () => {
    expect(estimateStageEnd({ ...BLOCK, nextControlAt: 1600 })).toBe(1000 + 480);
    expect(estimateStageEnd({ ...BLOCK, nextControlAt: 900 })).toBe(1000);
  });

  it('is exact where the road is timed from the finish', () => {
    expect(estimateStageEnd({ ...BLOCK, allowedSeconds: 3000, roadTimedFrom: 'stageFinish' })).toBe(1600);
  });

  it('needs no next control', () => {
    expect(estimateStageEnd({ ...BLOCK, nextControlAt: null, allowedSeconds: null })).toBe(1720);
  });
});
