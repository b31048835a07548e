import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Saved as comma separated by a spreadsheet whose decimal mark is the comma too, without quotes. */
export const SPLIT_DECIMALS: ItineraryShape = {
  title: 'comma separated text with unquoted decimal commas',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY,
  problems: [],
  text: `\uFEFFTC/SS,Location,SS km,Road km,Total km,Target time,First car due
TC0,Start Moorwald,,,,,08:30
TC1,Hollergraben,,18,40,18,40,0:28,08:58
SS1,Hollergraben (I),8,10,,8,10,,09:01
TC2,Eichberg,,12,25,20,35,0:32,09:33
SS2,Eichberg (I),11,55,,11,55,,09:36
TC2A,Service in,,21,30,32,85,0:45,10:21
TC2B,Service out,,,,0:30,10:51
TC3,Hollergraben,,18,40,18,40,0:28,11:19
SS3,Hollergraben (II),8,10,,8,10,,11:22
TC4,Eichberg,,12,25,20,35,0:32,11:54
SS4,Eichberg (II),11,55,,11,55,,11:57
TC4A,Finish Moorwald,,19,75,31,30,0:44,12:41
Total,,39,30,102,35,141,65,,
`,
};
