import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Only the rows of a PDF were copied, without headings, and dashes stand for blank cells. */
export const ROWS_ONLY: ItineraryShape = {
  title: 'rows copied from a PDF without their headings, dashes for blank cells',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY,
  problems: [': headings-assumed'],
  text: `TC0 Start Moorwald - - - - 08:30
TC1 Hollergraben - 18,40 18,40 0:28 08:58
SS1 Hollergraben (I) 8,10 - 8,10 0:03 09:01
TC2 Eichberg - 12,25 20,35 0:32 09:33
SS2 Eichberg (I) 11,55 - 11,55 0:03 09:36
TC2A Service in - 21,30 32,85 0:45 10:21
TC2B Service out - - - 0:30 10:51
TC3 Hollergraben - 18,40 18,40 0:28 11:19
SS3 Hollergraben (II) 8,10 - 8,10 0:03 11:22
TC4 Eichberg - 12,25 20,35 0:32 11:54
SS4 Eichberg (II) 11,55 - 11,55 0:03 11:57
TC4A Finish Moorwald - 19,75 31,30 0:44 12:41
`,
};
