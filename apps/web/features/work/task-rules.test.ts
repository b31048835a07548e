import { emptyState, taskIdOf } from '@halfshaft/worklog';
import { expect, it } from 'vitest';
import { CAR, cardOf, entryOf, MIA, NUTS, OIL, replicaOf, taskAt } from './fixtures';
import { taskRulesOf } from './task-rules';

it('opens the wheel nuts again when work that takes a wheel off is done, at the same service', () => {
  const cards = [
    cardOf(NUTS, { starterId: 'starter:wheel-nuts', needsSignature: true }),
    cardOf(OIL, { starterId: 'starter:front-pads' }),
  ];
  const replica = replicaOf(MIA, { entries: [entryOf({ cards })] });
  const rulesOf = (cardId: string) => taskRulesOf(replica, emptyState, taskAt(cardId, 'B'));
  expect(rulesOf(OIL)?.reopens).toEqual([taskIdOf(taskAt(NUTS, 'B'))]);
  expect(rulesOf(NUTS)?.reopens).toEqual([]);
  expect(taskRulesOf(replica, emptyState, { ...taskAt(OIL), entryId: `${CAR}0` })).toBeNull();
});
