import { describe, expect, it } from 'vitest';
import type { StageConfirmation } from './model';
import { runsOf } from './runs-of';
import { deepFreeze } from './testing/deep-freeze';
import { MIA } from './testing/people';

function confirmed(
  entryId: string,
  stageId: string,
  more: Partial<StageConfirmation> = {},
): StageConfirmation {
  const said = { entryId, stageId, driven: true, conditions: {}, ...more };
  return { ...said, confirmedBy: MIA, changedSeq: 1, changedBy: MIA };
}

describe('runsOf', () => {
  it('gives what one car’s crew said, by stage, without who said it', () => {
    const stages = deepFreeze([
      confirmed('car7', 'SS1', { conditions: { dust: 400 } }),
      confirmed('car7', 'SS2', { driven: false }),
    ]);
    expect(runsOf(stages, 'car7')).toEqual(
      new Map([
        ['SS1', { stageId: 'SS1', driven: true, conditions: { dust: 400 } }],
        ['SS2', { stageId: 'SS2', driven: false, conditions: {} }],
      ]),
    );
  });

  it('leaves out the stages of other cars, also of the same name', () => {
    const stages = [
      confirmed('car9', 'SS1', { driven: false }),
      confirmed('car7', 'SS1'),
      confirmed('car9', 'SS3'),
    ];
    expect([...runsOf(stages, 'car7').values()]).toEqual([{ stageId: 'SS1', driven: true, conditions: {} }]);
    expect(runsOf(stages, 'car8').size).toBe(0);
    expect(runsOf([], 'car7').size).toBe(0);
  });
});
