import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A bulletin typed in a hurry, with seven mistakes: each is told at its cell, and nothing is read. */
export const WITH_MISTAKES: ItineraryShape = {
  title: 'a printed bulletin with mistakes in it',
  options: SHAPE_OPTIONS,
  plain: null,
  problems: [
    '2:1 weekday-differs',
    '6:3 number-malformed',
    '9:1 unknown-row-kind',
    '10:7 time-mismatch',
    '11:1 stage-without-next-control',
    '12:1 stage-without-control',
    '12:3 stage-km-absurd',
    '12:5 total-mismatch',
    '13:5 total-mismatch',
  ],
  text: `TC/SS     Location                SS km    Road km   Total km   Target   First car due
Leg 1, Thursday 12 June 2026
TC0       Start Moorwald                                                 08:30
TC1       Hollergraben                     18,40     18,40      0:28     08:58

SS1       Hollergraben (I)        8,1O               8,10                09:01
TC2       Eichberg                         12,25     20,35      0:32     09:33
SS2       Eichberg (I)            11,55              11,55               09:36
XC2A      Car wash                         21,30     32,85      0:45     10:21
TC3       Hollergraben                     18,40     18,40      0:28     11:19
SS3       Hollergraben (II)       8,10               8,10                11:22
SS4       Eichberg (II)           1155               11,55               11:57
TC4A      Finish Moorwald                  19,75     31,39      0:44     12:41
`,
};
