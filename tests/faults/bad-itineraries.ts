import { ITINERARY } from '../support/event';

export interface BadItinerary {
  name: string;
  source: string;
  /** One of the problems stands here, as the person sees rows and columns. */
  at: { row: number | null; column: number | null; field: string | null };
  /** And says these. */
  says: string[];
}

/** The demo's table with one slip. Throws when the slip changes nothing, for then the row would test nothing. */
function withSlip(right: string, wrong: string): string {
  const { source } = ITINERARY;
  if (!source.includes(right)) throw new Error(`The demo itinerary has no "${right}".`);
  return source.replace(right, wrong);
}

const WHOLE = { row: null, column: null, field: null };

export const BAD_ITINERARIES: BadItinerary[] = [
  { name: 'nothing at all', source: '', at: WHOLE, says: ['There is no table', 'Paste the itinerary'] },
  {
    name: 'a letter instead of a table',
    source: 'Dear all,\nplease find the itinerary attached.',
    at: { row: 1, column: null, field: null },
    says: ['No line names the columns', 'SS km', 'First car due'],
  },
  {
    name: 'less than 0 km',
    source: withSlip('SS1\tOtter Moss (I)\t11.40', 'SS1\tOtter Moss (I)\t-11.40'),
    at: { row: 5, column: 3, field: 'SS km' },
    says: ['SS1', 'row 5', 'less than 0 km', 'minus sign'],
  },
  {
    name: 'a stage as long as a continent',
    source: withSlip('SS1\tOtter Moss (I)\t11.40\t\t11.40', 'SS1\tOtter Moss (I)\t11400\t\t11400'),
    at: { row: 5, column: 3, field: 'SS km' },
    says: ['SS1', '11400.00 km', 'decimal point'],
  },
  {
    name: 'letters where kilometres belong',
    source: withSlip('\t18.20\t18.20', '\teighteen\t18.20'),
    at: { row: 4, column: 4, field: 'Road km' },
    says: ['“eighteen”', 'Road km', '16.65'],
  },
  {
    name: 'a time of day that no day has',
    source: withSlip('08:28', '25:61'),
    at: { row: 5, column: 7, field: 'First car due' },
    says: ['“25:61”', 'time of day'],
  },
  {
    name: 'a service that ends before it starts',
    source: withSlip('0:20\t09:55', '0:20\t09:15'),
    at: { row: 9, column: 7, field: 'First car due' },
    says: ['TC2A', 'TC2B', 'ends before it starts', 'Correct one of the two'],
  },
  {
    name: 'a service that is left and never entered',
    source: withSlip('TC2A\tService in', 'TC2A\tBehind the barn'),
    at: { row: 9, column: 2, field: 'Location' },
    says: ['TC2B', 'without having entered it', 'Add the row'],
  },
  {
    name: 'two stages of one name',
    source: withSlip('SS2\t', 'SS1\t'),
    at: { row: 7, column: 1, field: 'TC/SS' },
    says: ['SS1', 'row 7', 'row 5', 'same name'],
  },
  {
    name: 'more rows than any event has',
    source: `${ITINERARY.source}${'SS10\tLong Rigg\t1.00\t\t1.00\t\t12:00\n'.repeat(2_500)}`,
    at: WHOLE,
    says: ['more than 2000 rows', 'one event only'],
  },
];
