import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A club event on one airfield: no road distances, halts without control numbers. */
export const SINGLE_VENUE: ItineraryShape = {
  title: 'a single-venue club event without road distances, with halts that have no numbers',
  options: SHAPE_OPTIONS,
  plain: `TC/SS;Location;SS km;Road km;First car due
TC0;Start;;0;09:00
TC1;Perimeter;;0;09:10
SS1;Perimeter;9,60;;09:13
TC1A;Service in;;0;09:25
TC1B;Service out;;0;10:05
TC2;Perimeter;;0;10:10
SS2;Perimeter;9,60;;10:13
TC2A;Service in;;0;10:25
TC2B;Service out;;0;11:05
TC3;Runways;;0;11:10
SS3;Runways;12,20;;11:13
TC3A;Finish;;0;11:30
`,
  problems: [
    '1: road-column-missing',
    '2:1 id-assumed',
    '5:1 id-assumed',
    '6:1 id-assumed',
    '9:1 id-assumed',
    '10:1 id-assumed',
    '13:1 id-assumed',
  ],
  text: `Control,Name,Stage km,First car
,Start,,09:00
TC1,Perimeter,,09:10
SS1,Perimeter,9.60,09:13
,Service in,,09:25
,Service out,,10:05
TC2,Perimeter,,10:10
SS2,Perimeter,9.60,10:13
,Service in,,10:25
,Service out,,11:05
TC3,Runways,,11:10
SS3,Runways,12.20,11:13
,Finish,,11:30
`,
};
