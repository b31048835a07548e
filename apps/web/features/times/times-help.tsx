import { HeadingHelp, type HeadingRow } from '../organiser/heading-help';

const HEADINGS: HeadingRow[] = [
  { heading: 'Car', words: 'the number on the doors' },
  { heading: 'Control', words: 'as it is printed in the itinerary, such as TC3B' },
  { heading: 'Due', words: 'when the car was due there: 14:05' },
  { heading: 'Time', words: 'when it came: 14:07' },
  {
    heading: 'Minutes late',
    words: 'in place of due and time, or beside them: 2 for late, -1 for early, 0 for neither',
  },
];

/** The headings of the list of times, what may stand below them, and which times tell most. */
export function TimesHelp() {
  return (
    <HeadingHelp caption="Headings of the list of times" rows={HEADINGS}>
      <p>
        The ways in and out of service are enough. With clock times at both ends it can be told who came late
        and whose service took too long; with every control, on which way minutes are lost.
      </p>
    </HeadingHelp>
  );
}
