import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Through the night of 24 to 25 October 2026, when clocks in Vienna go back from 03:00 to 02:00. */
export const NIGHT_OF_THE_CLOCKS: ItineraryShape = {
  title: 'a night event past midnight and through the clock change, printed, without target times on stages',
  options: { ...SHAPE_OPTIONS, startDate: '2026-10-24' },
  plain: `TC/SS;Location;SS km;Road km;Target time;First car due
TC0;Start Nebelau;;;;22:00
TC1;Fichtenkogel;;22,00;0:40;22:40
SS1;Fichtenkogel;12,00;;;22:43
TC1A;Regroup in;;30,00;1:05;23:48
TC1B;Regroup out / Service in;;;0:20;00:08
TC1C;Service out;;;0:30;00:38
TC2;Fichtenkogel;;22,00;0:40;01:18
SS2;Fichtenkogel;12,00;;;01:21
TC2A;Time control Alm;;30,00;1:00;02:21
TC2B;Finish Nebelau;;28,00;0:50;02:11
`,
  problems: ['11:7 clock-ambiguous', '12:7 clock-ambiguous'],
  text: `TC/SS   Location                    SS km    Road km   Total km   Target   First car due

TC0     Start Nebelau                                                      22:00
TC1     Fichtenkogel                         22,00     22,00      0:40     22:40
SS1     Fichtenkogel                12,00              12,00               22:43
TC1A    Regroup in                           30,00     42,00      1:05     23:48
TC1B    Regroup out / Service in                                  0:20     00:08
TC1C    Service out                                               0:30     00:38
TC2     Fichtenkogel                         22,00     22,00      0:40     01:18
SS2     Fichtenkogel                12,00              12,00               01:21
TC2A    Time control Alm                     30,00     42,00      1:00     02:21
TC2B    Finish Nebelau                       28,00     28,00      0:50     02:11
`,
};
