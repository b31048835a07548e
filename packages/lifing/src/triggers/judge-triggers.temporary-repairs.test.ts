import { describe } from 'vitest';
import { POINTS as at, done, repair } from './fixtures';
import { checkRows, type Row } from './situations/fixtures';

const ROWS: Row[] = [
  [
    'a temporary repair of this service is not looked at in it',
    'B',
    'under',
    { facts: [repair('under', at.atB)] },
    'nothing',
  ],
  [
    'it is looked at in the next one',
    'C',
    'under',
    { facts: [repair('under', at.atB)] },
    { now: 'temporary repair at Service B: wire round the hanger' },
  ],
  [
    'made on the road: looked at on arrival',
    'B',
    'under',
    { facts: [repair('under', at.SS1)] },
    { now: 'temporary repair on SS1: wire round the hanger' },
  ],
  [
    'looked at here: answered for this service',
    'C',
    'under',
    { facts: [repair('under', at.SS1), done('under', at.atC)] },
    'nothing',
  ],
  [
    'and due again at the next one, not late',
    'D',
    'under',
    { facts: [repair('under', at.SS3), done('under', at.atC)] },
    { now: 'temporary repair on SS3: wire round the hanger' },
  ],
  [
    'passed over in Service B: late in Service C',
    'C',
    'under',
    { facts: [repair('under', at.SS1)] },
    { late: 'temporary repair on SS1: wire round the hanger' },
  ],
  ['made good in this service: over', 'C', 'under', { facts: [repair('under', at.SS1, at.atC)] }, 'nothing'],
  [
    'made good only later: still due here',
    'B',
    'under',
    { facts: [repair('under', at.SS1, at.atC)] },
    { now: 'temporary repair on SS1: wire round the hanger' },
  ],
  ['another card is not called for', 'C', 'look', { facts: [repair('under', at.SS1)] }, 'nothing'],
];

describe('judgeTriggers: temporary repairs', () => {
  checkRows(ROWS);
});
