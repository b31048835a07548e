import { PLAIN_TWO_LEGS } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Copied from a PDF by a reader that keeps the columns: page lines, wrapped names, section numbers half way down. */
export const PRINTED_COLUMNS: ItineraryShape = {
  title: 'text copied from a PDF with its columns kept apart, two pages, wrapped names and margin numbers',
  options: SHAPE_OPTIONS,
  plain: PLAIN_TWO_LEGS,
  problems: [],
  text: `                             RALLYE LINDACH 2026
                        ITINERARY OF ALL SECTIONS

  Leg 1                                                Friday 12 June 2026
  TC/SS   Location                        SS      Liaison   Total   Target   First car
                                          km      km        km      time     due
  TC0     Start Lindach                                                      13:00
  RZ1     Refuel, distance to next refuel (17,65) (42,10)   (59,75)
  TC1     Hochmoos                                24,30     24,30   0:35     13:35
  SS1     Hochmoos (I)                    9,80              9,80    0:03     13:38
  TC2     Steinbruch                              11,20     21,00   0:28     14:06       1
          am Wald
  SS2     Steinbruch am Wald (I)          7,85              7,85    0:05     14:11
  TC2A    Remote service in                       6,60      14,45   0:20     14:31
  TC2B    Remote service out                                        0:15     14:46
  TC3     Hochmoos                                14,00     14,00   0:25     15:11
  SS3     Hochmoos (II)                   9,80              9,80    0:03     15:14
  TC4     Steinbruch am Wald                      11,20     21,00   0:28     15:42
  SS4     Steinbruch                      7,85              7,85    0:05     15:47
          am Wald (II)
  TC4A    Regroup in                              28,40     36,25   0:47     16:34
  TC4B    Regroup out / Service in                                  0:20     16:54
  TC4C    Service out                                               0:45     17:39       2
  RZ2     Refuel                                  1,50      1,50
  TC4D    Parc fermé in                           2,50      2,50    0:10     17:49
          Total leg 1                     35,30   99,70     135,00

  Version 3 of 1.5.2026                                             Page 1 of 2
\f                             RALLYE LINDACH 2026
                        ITINERARY OF ALL SECTIONS

  Leg 2                                                Saturday 13 June 2026
  TC/SS   Location                        SS      Liaison   Total   Target   First car
                                          km      km        km      time     due
  TC4E    Parc fermé out / Service in                                        07:30
  TC4F    Service out                                               0:15     07:45
  TC5     Auwald                                  31,75     31,75   0:45     08:30
  SS5     Auwald (I)                      16,65             16,65   0:03     08:33       3
  TC6     Kalte                                   19,53     36,18   0:44     09:17
          Rinne
  SS6     Kalte Rinne                     12,05             12,05   0:03     09:20
  TC6A    Regroup in                              22,10     34,15   0:50     10:10
  TC6B    Regroup out / Service in                                  0:20     10:30
  TC6C    Service out                                               0:30     11:00
  TC7     Auwald                                  31,75     31,75   0:45     11:45       4
  SS7     Auwald (II)                     16,65             16,65   0:03     11:48
  TC7A    Finish Lindach                          26,00     42,65   0:58     12:46
          Total leg 2                     45,35   131,13    176,48
          Totals of the rally             80,65   230,83    311,48

  Version 3 of 1.5.2026                                             Page 2 of 2
`,
};
