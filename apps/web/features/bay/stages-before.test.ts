import { emptyState } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { findVisit } from '../service/visit';
import { CAR, replicaOf } from '../work/fixtures';
import { stagesBefore } from './stages-before';

const replica = replicaOf();

function stagesAt(letter: string) {
  const visit = findVisit(replica, CAR, letter);
  return visit
    ? stagesBefore(replica, emptyState, visit).map((each) => [each.stage.id, each.isRecent])
    : null;
}

describe('stagesBefore', () => {
  it('lists what lies before the service, and which of it since the one before', () => {
    expect(stagesAt('A')).toEqual([['SS1', true]]);
    expect(stagesAt('B')).toEqual([
      ['SS1', false],
      ['SS2', true],
    ]);
  });
});
