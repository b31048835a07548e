import { describe } from 'vitest';
import { POINTS as at, done } from './fixtures';
import { checkRows, type Row } from './situations/fixtures';

const ROWS: Row[] = [
  ['no dark stage: no lamps', 'C', 'lamps-on', {}, 'nothing'],
  [
    'SS5 is dark: lamps on in Service C, the last before it',
    'C',
    'lamps-on',
    { dark: ['SS5'] },
    { now: 'dark stage SS5 comes before Service D' },
  ],
  ['SS5 is dark: not yet in Service A, Service C will do', 'A', 'lamps-on', { dark: ['SS5'] }, 'nothing'],
  [
    'SS3 is dark: on in Service A already, the remote service is too short',
    'A',
    'lamps-on',
    { dark: ['SS3'] },
    { now: 'dark stage SS3 comes before Service C' },
  ],
  [
    'forgotten in Service A: cannot be done in B, and SS3 is dark',
    'B',
    'lamps-on',
    { dark: ['SS3'] },
    { tooLate: 'dark stage SS3 comes before Service C' },
  ],
  [
    'lamps are on: not again',
    'C',
    'lamps-on',
    { dark: ['SS3', 'SS5'], facts: [done('lamps-on', at.atA)] },
    'nothing',
  ],
  [
    'lamps were on and came off: on again for SS8',
    'E',
    'lamps-on',
    { dark: ['SS5', 'SS8'], facts: [done('lamps-on', at.atC), done('lamps-off', at.atD)] },
    { now: 'dark stage SS8 comes before the finish' },
  ],
  [
    'the dark stage was cancelled: no lamps',
    'C',
    'lamps-on',
    { dark: ['SS5'], notDriven: ['SS5'] },
    'nothing',
  ],
  [
    'the last dark stage is over: lamps off at the first service',
    'D',
    'lamps-off',
    { dark: ['SS5'], facts: [done('lamps-on', at.atC)] },
    { now: 'no dark stage is left' },
  ],
  [
    'left on in Service D: late in Service E',
    'E',
    'lamps-off',
    { dark: ['SS5'], facts: [done('lamps-on', at.atC)] },
    { late: 'no dark stage is left' },
  ],
  [
    'a dark stage is still to come: lamps stay on',
    'D',
    'lamps-off',
    { dark: ['SS5', 'SS8'], facts: [done('lamps-on', at.atC)] },
    'nothing',
  ],
  ['lamps never went on: nothing to take off', 'D', 'lamps-off', { dark: ['SS5'] }, 'nothing'],
  [
    'SS5 is cancelled with the lamps on since Service A: off, and could have been in B',
    'C',
    'lamps-off',
    { dark: ['SS5'], notDriven: ['SS5'], facts: [done('lamps-on', at.atA)] },
    { late: 'no dark stage is left' },
  ],
  [
    'SS6 will be wet: other tyres in Service D',
    'D',
    'wet',
    { wet: ['SS6'] },
    { now: 'wet stage SS6 comes before Service E' },
  ],
  [
    'SS6 was planned wet but is confirmed dry',
    'D',
    'wet',
    { wet: ['SS6'], confirmedDry: ['SS6'] },
    'nothing',
  ],
  [
    'the next loop is dry: dry tyres, although a wet one comes later',
    'C',
    'dry',
    { wet: ['SS3', 'SS8'], facts: [done('wet', at.atB)] },
    { now: 'no wet stage comes before Service D' },
  ],
  [
    'the next loop is wet too: wet tyres stay on',
    'C',
    'dry',
    { wet: ['SS3', 'SS5'], facts: [done('wet', at.atB)] },
    'nothing',
  ],
];

describe('judgeTriggers: conditions', () => {
  checkRows(ROWS);
});
