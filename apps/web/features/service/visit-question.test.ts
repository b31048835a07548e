import { emptyState } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { CAR, entryOf, replicaOf } from '../work/fixtures';
import { findVisit } from './visit';
import { visitQuestion } from './visit-question';

it('judges a car whose order was set anew by the position it then has', () => {
  const entry = entryOf({ startPosition: 7, positionsBySection: { 2: 3 } });
  const replica = replicaOf(undefined, { entries: [entry] });
  const visit = findVisit(replica, CAR, 'A');
  if (!visit) throw new Error('the small event has a Service A');
  const positions = visitQuestion(replica, emptyState, visit).position;
  expect(positions).toEqual(
    new Map([
      [1, 7],
      [2, 3],
    ]),
  );
});
