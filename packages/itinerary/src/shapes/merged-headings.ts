import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A spreadsheet whose headings take two rows, the upper merged over several columns, with blank heading cells. */
export const MERGED_HEADINGS: ItineraryShape = {
  title: 'a spreadsheet with merged headings in two rows, blank heading cells and empty rows',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY,
  problems: [],
  text: [
    'Moorwald day rally\t\t\t\t\t\t\t',
    '\t\t\t\t\t\t\t',
    '\t\t\tDistance (km)\t\t\tTarget\tFirst car',
    '\t\tLocation / stage name\tSS\tRoad\tTotal\ttime\tdue',
    '\tTC0\tStart Moorwald\t\t\t\t\t08:30',
    '\tTC1\tHollergraben\t\t18.40\t18.40\t0:28\t08:58',
    '\tSS1\tHollergraben (I)\t8.10\t\t8.10\t\t09:01',
    '\tTC2\tEichberg\t\t12.25\t20.35\t0:32\t09:33',
    '\tSS2\tEichberg (I)\t11.55\t\t11.55\t\t09:36',
    '\tTC2A\tService in\t\t21.30\t32.85\t0:45\t10:21',
    '\t\t\t\t\t\t\t',
    '\tTC2B\tService out\t\t\t\t0:30\t10:51',
    '\tTC3\tHollergraben\t\t18.40\t18.40\t0:28\t11:19',
    '\tSS3\tHollergraben (II)\t8.10\t\t8.10\t\t11:22',
    '\tTC4\tEichberg\t\t12.25\t20.35\t0:32\t11:54',
    '\tSS4\tEichberg (II)\t11.55\t\t11.55\t\t11:57',
    '\tTC4A\tFinish Moorwald\t\t19.75\t31.30\t0:44\t12:41',
    '\tTotals\t\t39.30\t102.35\t141.65\t\t',
  ].join('\n'),
};
