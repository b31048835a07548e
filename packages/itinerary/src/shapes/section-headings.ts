import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Sections as headings between the rows, each with its sums, notes below the table, metres for short roads. */
export const SECTION_HEADINGS: ItineraryShape = {
  title: 'sections as headings between the rows, sums of sections, notes below',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY.replace('due\n', 'due;Section\n')
    .replace('TC0;Start Moorwald;;;;;08:30', 'TC0;Start Moorwald;;;;;08:30;1')
    .replace('TC3;Hollergraben;;18,40;18,40;0:28;11:19', 'TC3;Hollergraben;;18,40;18,40;0:28;11:19;2'),
  problems: ['22: line-left-out', '23: line-left-out'],
  text: `TC/SS;Location;SS km;Road km;Total km;Target time;First car due;
Day 1 - 12/06/2026;;;;;;;
Section 1;;;;;;;
TC0;Start Moorwald;;;;;08:30;
TC1;Hollergraben;;18400 m;18,40;0:28;08:58;
SS1;Hollergraben (I);8,10;;8,10;;09:01;
TC2;Eichberg;;12,25;20,35;0:32;09:33;
SS2;Eichberg (I);11,55;;11,55;;09:36;
TC2A;Service in;;21,30;32,85;0:45;10:21;
TC2B;Service out;;;;0:30;10:51;
Section 1 total;;19,65;51,95;71,60;;;
Section 2;;;;;;;
TC3;Hollergraben;;18,40;18,40;0:28;11:19;
SS3;Hollergraben (II);8,10;;8,10;;11:22;
TC4;Eichberg;;12,25;20,35;0:32;11:54;
SS4;Eichberg (II);11,55;;11,55;;11:57;
TC4A;Finish Moorwald;;19,75;31,30;0:44;12:41;
Section 2 total;;19,65;50,40;70,05;;;
Day total;;39,30;102,35;141,65;;;
Grand total;;39,30;102,35;141,65;;;
;;;;;;;
Road closed from six in the morning;;;;;;;
Subject to approval;;;;;;;
`,
};
