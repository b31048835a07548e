import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** Three legs as at world level: super special on the eve, remote service, flexi service, tyre zones, nights in parc fermé. */
export const LONG_EVENT: ItineraryShape = {
  title: 'three legs with a super special, remote and flexi service, tyre and technical zones and two nights',
  options: { ...SHAPE_OPTIONS, startDate: '2026-09-10' },
  plain: `TC/SS\tLocation\tSS km\tRoad km\tTotal km\tTarget time\tFirst car due\tStart interval
Leg 1, 2026-09-10
TC0\tStart Port Quay\t\t\t\t\t19:00\t120 s
TC1\tHarbour arena\t\t6.40\t6.40\t0:20\t19:20
SSS1\tHarbour super special\t2.15\t\t2.15\t0:05\t19:25
TC1A\tParc fermé in\t\t3.10\t5.25\t0:25\t19:50
Leg 2, 2026-09-11
TC1B\tParc fermé out / Service in\t\t\t\t\t06:30\t120 s, from 11: 60 s
TC1C\tService out\t\t\t\t0:15\t06:45
RZ1\tRefuel\t\t2.00\t2.00
TC2\tCairn Moor\t\t60.35\t62.35\t1:15\t08:00
SS2\tCairn Moor\t21.40\t\t21.40\t0:03\t08:03
TC2A\tRemote service in\t\t18.25\t39.65\t0:50\t08:53
TC2B\tRemote service out\t\t\t\t0:15\t09:08
TC2C\tTyre fitting zone in\t\t0.50\t0.50\t0:03\t09:11
TC2D\tTyre fitting zone out\t\t\t\t0:15\t09:26
TC3\tGlen Skerry\t\t33.10\t33.10\t0:50\t10:16
SS3\tGlen Skerry\t14.75\t\t14.75\t0:08\t10:24
TC3A\tRegroup in / Technical zone in\t\t48.60\t63.35\t1:20\t11:44
TC3B\tRegroup out / Technical zone out / Flexi service in\t\t\t\t0:20\t12:04
TC3C\tFlexi service out / Parc fermé in\t\t\t\t0:45\t12:49
Leg 3, 2026-09-12
TC3D\tParc fermé out / Service in\t\t\t\t\t07:00
TC3E\tService out\t\t\t\t0:15\t07:15
TC4\tLong Ridge\t\t41.90\t41.90\t0:55\t08:10
SS4\tLong Ridge\t18.30\t\t18.30\t0:03\t08:13
TC4A\tFinish Port Quay\t\t45.20\t63.50\t1:15\t09:28
`,
  problems: [],
  text: `SUPPLEMENTARY REGULATIONS - APPENDIX 1 - ITINERARY\t\t\t\t\t\t\t
Section\tTC/SS\tLocation\tSS km\tLiaison km\tTotal km\tTarget time\tFirst car due\tStart interval
\tLeg 1 (Thursday, 10 September 2026)
1\tTC0\tStart Port Quay\t\t\t\t\t19:00\t120 s
\tTC1\tHarbour arena\t\t6.40\t6.40\t0:20\t19:20
\tSSS1\tHarbour super special\t2.15\t\t2.15\t0:05\t19:25
\tTC1A\tParc fermé in\t\t3.10\t5.25\t0:25\t19:50
\tTotal leg 1\t\t2.15\t9.50\t11.65
\tLeg 2 (Friday, 11 September 2026)
2\tTC1B\tParc fermé out / Service in\t\t\t\t\t06:30\t120 s, from 11: 60 s
\tTC1C\tService out\t\t\t\t0:15\t06:45
\tRZ1\tRefuel\t\t2.00\t2.00
\tTC2\tCairn Moor\t\t60.35\t62.35\t1:15\t08:00
\tSS2\tCairn Moor\t21.40\t\t21.40\t0:03\t08:03
\tTC2A\tRemote service in\t\t18.25\t39.65\t0:50\t08:53
\tTC2B\tRemote service out\t\t\t\t0:15\t09:08
\tTC2C\tTyre fitting zone in\t\t0.50\t0.50\t0:03\t09:11
\tTC2D\tTyre fitting zone out\t\t\t\t0:15\t09:26
\tTC3\tGlen Skerry\t\t33.10\t33.10\t0:50\t10:16
\tSS3\tGlen Skerry\t14.75\t\t14.75\t0:08\t10:24
\tTC3A\tRegroup in / Technical zone in\t\t48.60\t63.35\t1:20\t11:44
\tTotal section 2\t\t36.15\t162.80\t198.95
3\tTC3B\tRegroup out / Technical zone out / Flexi service in\t\t\t\t0:20\t12:04
\tTC3C\tFlexi service out / Parc fermé in\t\t\t\t0:45\t12:49
\tTotal leg 2\t\t36.15\t162.80\t198.95
\tLeg 3 (Saturday, 12 September 2026)
4\tTC3D\tParc fermé out / Service in\t\t\t\t\t07:00
\tTC3E\tService out\t\t\t\t0:15\t07:15
\tTC4\tLong Ridge\t\t41.90\t41.90\t0:55\t08:10
\tSS4\tLong Ridge\t18.30\t\t18.30\t0:03\t08:13
\tTC4A\tFinish Port Quay\t\t45.20\t63.50\t1:15\t09:28
\tTotal leg 3\t\t18.30\t87.10\t105.40
\tTotal of the rally\t\t56.60\t259.40\t316.00
`,
};
