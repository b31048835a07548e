import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A North American event: miles written in the cells, twelve-hour clock, month before day, passage control. */
export const CELL_MILES: ItineraryShape = {
  title: 'miles in the cells, a twelve-hour clock, the month before the day and a passage control',
  options: { ...SHAPE_OPTIONS, timeZone: 'America/Chicago', startDate: '2026-10-16' },
  // 9.00 mi 14484.1 m, 4.50 mi 7242.0 m, 2.25 mi 3621.0 m, 10.00 mi 16093.4 m, 3.00 mi 4828.0 m.
  plain: `TC/SS;Location;SS km;Road km;Target time;First car due
Leg 1, 2026-10-16;;;;;
TC0;Start Cedar Bluff;;;;12:30
TC1;Pine Hollow;;19,312;0:40;13:10
SS1;Pine Hollow;7,242;;;13:13
TC1A;Service in;;16,093;0:35;13:48
TC1B;Service out;;;0:30;14:18
TC2;Lost Creek;;14,484;0:25;14:43
SS2;Lost Creek;3,621;;;14:46
TC2A;Finish Cedar Bluff;;16,093;0:30;15:16
`,
  problems: ['5:4 untimed-road-added'],
  text: `Control;Location;Stage;Transport;Time allowed;First car
Day 1 - Friday, October 16th 2026;;;;;
TC0;Start Cedar Bluff;;;;12:30 PM

PC1;Ranger station;;3.00 mi;;
TC1;Pine Hollow;;9.00 mi;40 min;1:10 PM
SS1;Pine Hollow;4.50 miles;;3 min;1:13 PM
TC1A;Service in;;10.00 mi;35 min;1:48 PM
TC1B;Service out;;;30 min;2:18 PM
TC2;Lost Creek;;9.00 mi;25 min;2:43 PM
SS2;Lost Creek;2.25 miles;;3 min;2:46 PM
TC2A;Finish Cedar Bluff;;10.00 mi;30 min;3:16 PM
`,
};
