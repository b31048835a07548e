import { describe } from 'vitest';
import { POINTS as at, done, incident } from './fixtures';
import { checkRows, type Row } from './situations/fixtures';

const ROWS: Row[] = [
  ['no incident: nothing is called for', 'C', 'look', {}, 'nothing'],
  [
    'an off on SS1 is looked at in the next service',
    'B',
    'look',
    { facts: [incident('off', at.SS1)] },
    { now: 'off the road on SS1' },
  ],
  [
    'a hit has the same card',
    'B',
    'look',
    { facts: [incident('contact', at.SS2)] },
    { now: 'hit something on SS2' },
  ],
  [
    'an off after this service is not known here yet',
    'B',
    'look',
    { facts: [incident('off', at.SS3)] },
    'nothing',
  ],
  ['another incident has other cards', 'B', 'look', { facts: [incident('softPedal', at.SS1)] }, 'nothing'],
  [
    'looked at in this service: answered',
    'B',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.atB)] },
    'nothing',
  ],
  [
    'looked at by the crew at the stage: answered',
    'B',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.SS1)] },
    'nothing',
  ],
  [
    'looked at before it happened: not answered',
    'B',
    'look',
    { facts: [done('look', at.atA), incident('off', at.SS1)] },
    { now: 'off the road on SS1' },
  ],
  [
    'told at the in-control after the look was done: due again',
    'B',
    'look',
    { facts: [done('look', at.atB), incident('off', at.atB)] },
    { now: 'off the road at Service B' },
  ],
  [
    'not looked at in Service B: late in Service C',
    'C',
    'look',
    { facts: [incident('off', at.SS1)] },
    { late: 'off the road on SS1' },
  ],
  [
    'a second off after the look: due again, not late',
    'C',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.atB), incident('off', at.SS4)] },
    { now: 'off the road on SS4' },
  ],
  [
    'a soft pedal cannot be bled in a remote service of ten minutes',
    'B',
    'bleed',
    { facts: [incident('softPedal', at.SS2)] },
    { notHere: 'next chance Service C' },
  ],
  [
    'it is bled in the next long one, and is not late there',
    'C',
    'bleed',
    { facts: [incident('softPedal', at.SS2)] },
    { now: 'soft brake pedal on SS2' },
  ],
  [
    'one ford is no reason to look under the car',
    'C',
    'under',
    { facts: [incident('ford', at.SS1)] },
    'nothing',
  ],
  [
    'two fords in one day are',
    'C',
    'under',
    { facts: [incident('ford', at.SS1), incident('ford', at.SS3)] },
    { now: 'through a ford on SS3, not the first that day' },
  ],
  [
    'a ford today and one tomorrow are not two',
    'E',
    'under',
    { facts: [incident('ford', at.SS1), incident('ford', at.SS6)] },
    'nothing',
  ],
  [
    'a third ford after the look calls again',
    'C',
    'under',
    {
      facts: [
        incident('ford', at.SS1),
        incident('ford', at.SS2),
        done('under', at.atB),
        incident('ford', at.SS3),
      ],
    },
    { now: 'through a ford on SS3, not the first that day' },
  ],
];

describe('judgeTriggers: incidents', () => {
  checkRows(ROWS);
});
