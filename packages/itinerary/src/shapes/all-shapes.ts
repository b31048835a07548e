import { BAR_TABLE } from './bar-table';
import { CELL_MILES } from './cell-miles';
import { FRENCH_TABLE } from './french-table';
import { LONG_EVENT } from './long-event';
import { MERGED_HEADINGS } from './merged-headings';
import { MILES_TABLE } from './miles-table';
import { NATIONAL_ONE_DAY } from './national-one-day';
import { NIGHT_OF_THE_CLOCKS } from './night-of-the-clocks';
import { PRINTED_COLUMNS } from './printed-columns';
import { PRINTED_SINGLE_SPACES } from './printed-single-spaces';
import { ROWS_ONLY } from './rows-only';
import { SECTION_HEADINGS } from './section-headings';
import type { ItineraryShape } from './shape';
import { SINGLE_VENUE } from './single-venue';
import { SPLIT_DECIMALS } from './split-decimals';
import { STANDARD_TABLE } from './standard-table';
import { WITH_MISTAKES } from './with-mistakes';

/** Every layout that is known to be read. */
export const ALL_SHAPES: readonly ItineraryShape[] = [
  STANDARD_TABLE,
  PRINTED_COLUMNS,
  PRINTED_SINGLE_SPACES,
  MERGED_HEADINGS,
  NATIONAL_ONE_DAY,
  FRENCH_TABLE,
  SPLIT_DECIMALS,
  BAR_TABLE,
  MILES_TABLE,
  CELL_MILES,
  SINGLE_VENUE,
  LONG_EVENT,
  NIGHT_OF_THE_CLOCKS,
  ROWS_ONLY,
  SECTION_HEADINGS,
  WITH_MISTAKES,
];
