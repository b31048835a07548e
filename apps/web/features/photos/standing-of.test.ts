import { emptyState, type RecordedFact } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { MIA, replicaOf } from '../work/fixtures';
import { standingOf } from './standing-of';

const recorded = (more: Partial<RecordedFact> = {}): RecordedFact => ({
  ...{ factId: 'p', entryId: 'e', at: { kind: 'service', serviceId: 'A' }, recordedBy: MIA, changedBy: MIA },
  ...{
    fact: { kind: 'photo', of: 'e~A~card~c', words: '', bytes: 1, sha256: '' },
    withdrawn: false,
    changedSeq: 5,
  },
  ...more,
});
const standing = (fact: RecordedFact | null, confirmedSeq: number, owner = MIA) =>
  standingOf(
    {
      replica: replicaOf(MIA),
      state: { ...emptyState, facts: new Map(fact ? [[fact.factId, fact]] : []) },
      confirmedSeq,
    },
    { photoId: 'p', owner },
  );

it('sends a picture under its own person once the server has its entry, and never one that was taken back', () => {
  expect(standing(null, 9)).toBe('wait');
  expect(standing(recorded(), 4)).toBe('wait');
  expect(standing(recorded(), 5)).toBe('send');
  expect(standing(recorded(), 5, 'somebody else')).toBe('wait');
  expect(standing(recorded({ withdrawn: true }), 4)).toBe('wait');
  expect(standing(recorded({ withdrawn: true }), 5)).toBe('gone');
});
