import { describe } from 'vitest';
import { POINTS as at, done, fitted } from './fixtures';
import { checkRows, type Row } from './situations/fixtures';

const ROWS: Row[] = [
  [
    'pads changed here: nuts here',
    'C',
    'nuts',
    { facts: [done('pads', at.atC)] },
    { now: 'follows "Change the pads", done at Service C' },
  ],
  [
    'nuts done after the pads: answered',
    'C',
    'nuts',
    { facts: [done('pads', at.atC), done('nuts', at.atC)] },
    'nothing',
  ],
  [
    'nuts done before the pads: due again',
    'C',
    'nuts',
    { facts: [done('nuts', at.atC), done('pads', at.atC)] },
    { now: 'follows "Change the pads", done at Service C' },
  ],
  [
    'nuts left out after the pads: late at the next service',
    'D',
    'nuts',
    { facts: [done('pads', at.atC)] },
    { late: 'follows "Change the pads", done at Service C' },
  ],
  [
    'the re-check at the first halt is no work of the service',
    'D',
    'nuts-again',
    { facts: [done('pads', at.atC)] },
    'nothing',
  ],
  [
    'new pads have not been driven yet: no look in the service they were fitted in',
    'C',
    'new-look',
    { facts: [done('pads', at.atC)] },
    'nothing',
  ],
  [
    'new pads have done a stage: a look',
    'D',
    'new-look',
    { facts: [done('pads', at.atC)] },
    { now: 'first look after "Change the pads", fitted at Service C' },
  ],
  [
    'the one stage was cancelled: a stage later',
    'D',
    'new-look',
    { facts: [done('pads', at.atC)], notDriven: ['SS5'] },
    'nothing',
  ],
  [
    'looked at once: answered for good',
    'E',
    'new-look',
    { facts: [done('pads', at.atC), done('new-look', at.atD)] },
    'nothing',
  ],
  [
    'not looked at in Service D: late in Service E',
    'E',
    'new-look',
    { facts: [done('pads', at.atC)] },
    { late: 'first look after "Change the pads", fitted at Service C' },
  ],
  [
    'fitted by the crew on the road: the same',
    'B',
    'new-look',
    { facts: [fitted('pads', at.SS1)] },
    { now: 'first look after "Change the pads", fitted on SS1' },
  ],
  [
    'fitted again: a look again',
    'E',
    'new-look',
    { facts: [done('pads', at.atC), done('new-look', at.atD), fitted('pads', at.atD)] },
    { now: 'first look after "Change the pads", fitted at Service D' },
  ],
];

describe('judgeTriggers: work done', () => {
  checkRows(ROWS);
});
