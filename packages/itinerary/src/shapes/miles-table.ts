import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A British forest event: miles, main time controls, minutes, times of car 0. 1 mile is 1,609.344 m. */
export const MILES_TABLE: ItineraryShape = {
  title: 'a British table in miles with main controls, target minutes and car 0',
  options: { ...SHAPE_OPTIONS, timeZone: 'Europe/London', printedFor: 'carZero', startIntervalSeconds: 30 },
  // 5.22 mi 8400.8 m, 12.40 mi 19955.9 m, 8.05 mi 12955.2 m, 3.10 mi 4989.0 m, 15.65 mi 25186.2 m.
  plain: `TC/SS,Location,SS km,Road km,Target time,First car due,Role
MTC0,Hexley market square,,,,08:30:30,
TC1,Thornrigg,,19.956,0:32,09:02:30,
SS1,Thornrigg,8.401,,,09:05:30,
TC2,Blackmire,,4.989,0:25,09:30:30,
SS2,Blackmire,12.955,,,09:33:30,
MTC1,Hexley showground - service in,,25.186,0:55,10:28:30,
MTC2,Hexley showground - service out,,,0:40,11:08:30,
TC3,Thornrigg,,19.956,0:32,11:40:30,
SS3,Thornrigg 2,8.401,,,11:43:30,
MTC3,Hexley finish,,25.186,0:55,12:38:30,
`,
  problems: [],
  text: `Hexley Forest Stages,,,,,
All distances in miles,,,,,
,,,,,
Control,Location,Stage,Road,Target (minutes),Scheduled car 0
MTC 0,Hexley market square,,,,08:30
TC 1,Thornrigg,,12.40,32,09:02
SS 1,Thornrigg,5.22,,3,09:05
TC 2,Blackmire,,3.10,25,09:30
SS 2,Blackmire,8.05,,3,09:33
MTC 1,Hexley showground - service in,,15.65,55,10:28
MTC 2,Hexley showground - service out,,,40,11:08
TC 3,Thornrigg,,12.40,32,11:40
SS 3,Thornrigg 2,5.22,,3,11:43
MTC 3,Hexley finish,,15.65,55,12:38
Totals,,18.49,59.20,,
`,
};
