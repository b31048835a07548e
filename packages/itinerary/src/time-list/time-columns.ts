import type { ListShape } from '../pasted-list/list-shape';

/** The columns of a list of times, by meaning. */
export type TimeColumn = 'car' | 'control' | 'due' | 'time' | 'late';

/** Two hundred cars at fifty controls. */
const MOST_ROWS = 10_000;

/** The list of times at controls: which car was where, when it was due and when it came, or how late it was. */
export const TIME_SHAPE: ListShape<TimeColumn> = {
  headings: { car: 'Car', control: 'Control', due: 'Due', time: 'Time', late: 'Minutes late' },
  synonyms: {
    car: ['car number', 'no', 'number', 'start number', 'door number'],
    control: ['time control', 'tc', 'where'],
    due: ['due time', 'target', 'target time', 'scheduled', 'scheduled time'],
    time: ['actual', 'actual time', 'check in', 'checked in', 'time written'],
    late: ['late', 'lateness', 'late minutes', 'late by'],
  },
  necessary: ['car', 'control'],
  mostRows: MOST_ROWS,
  emptySays: 'The list has no time. Paste a row of headings, then a row for each car at each control.',
};
