import { PLAIN_TWO_LEGS } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Copied from a PDF by a reader that puts one space between all cells and drops empty ones. */
export const PRINTED_SINGLE_SPACES: ItineraryShape = {
  title: 'text copied from a PDF with single spaces, blank cells lost, names wrapped',
  options: SHAPE_OPTIONS,
  plain: PLAIN_TWO_LEGS,
  problems: [],
  text: `RALLYE LINDACH 2026
Itinerary - Issue 3
Leg 1 Friday 12 June 2026
TC/SS Location SS dist. Liaison dist. Total dist. Target time First car due
TC 0 Start Lindach 13:00 1
ZR1/RZ1 Refuel, distance to next refuel (17,65) (42,10) (59,75)
TC 1 Hochmoos 24,30 24,30 0:35 13:35
SS 1 Hochmoos (I) 9,80 9,80 0:03 13:38
TC 2 Steinbruch 11,20 21,00 0:28 14:06
am Wald
SS 2 Steinbruch am Wald (I) 7,85 7,85 0:05 14:11
TC 2A Remote service in 6,60 14,45 0:20 14:31
TC 2B Remote service out 0:15 14:46
TC 3 Hochmoos 14,00 14,00 0:25 15:11
SS 3 Hochmoos (II) 9,80 9,80 0:03 15:14
TC 4 Steinbruch am 11,20 21,00 0:28 15:42
Wald
SS 4 Steinbruch am Wald (II) 7,85 7,85 0:05 15:47
TC 4A Regroup in 28,40 36,25 0:47 16:34
TC 4B Regroup out / Service in 0:20 16:54 2
TC 4C Service out 0:45 17:39
RZ 2 Refuel 1,50 1,50
TC 4D Parc fermé in 2,50 2,50 0:10 17:49
Total leg 1 35,30 99,70 135,00 26,1%
Page 1 / 2
RALLYE LINDACH 2026
Itinerary - Issue 3
Leg 2 Saturday 13 June 2026
TC/SS Location SS dist. Liaison dist. Total dist. Target time First car due
TC 4E Parc fermé out / Service in 07:30 3
TC 4F Service out 0:15 07:45
TC 5 Auwald 31,75 31,75 0:45 08:30
SS 5 Auwald (I) 16,65 16,65 0:03 08:33
TC 6 Kalte Rinne 19,53 36,18 0:44 09:17
SS 6 Kalte Rinne 12,05 12,05 0:03 09:20
TC 6A Regroup in 22,10 34,15 0:50 10:10
TC 6B Regroup out / Service in 0:20 10:30 4
TC 6C Service out 0:30 11:00
TC 7 Auwald 31,75 31,75 0:45 11:45
SS 7 Auwald (II) 16,65 16,65 0:03 11:48
TC 7A Finish Lindach 26,00 42,65 0:58 12:46
Total leg 2 45,35 131,13 176,48 25,7%
Totals of the rally 80,65 230,83 311,48 25,9%
Page 2 / 2
`,
};
