/** The demo's event, invented: two legs, two loops, a remote service, one stage after dark, a night in parc fermé. */
export const DEMO_ITINERARY = `TC/SS\tLocation\tSS km\tRoad km\tTotal km\tTarget time\tFirst car due
Leg 1\t\t\t\t\t\t
TC0\tStart Larchwater\t\t\t\t\t08:00
TC1\tOtter Moss\t\t18.20\t18.20\t0:25\t08:25
SS1\tOtter Moss (I)\t11.40\t\t11.40\t\t08:28
TC2\tQuarry Bank\t\t9.60\t21.00\t0:30\t08:58
SS2\tQuarry Bank (I)\t7.25\t\t7.25\t\t09:01
TC2A\tService in\t\t14.80\t22.05\t0:34\t09:35
TC2B\tService out\t\t\t\t0:20\t09:55
RZ1\tRefuel Larchwater\t\t1.10\t1.10\t\t
TC3\tOtter Moss\t\t17.10\t17.10\t0:28\t10:23
SS3\tOtter Moss (II)\t11.40\t\t11.40\t\t10:26
TC4\tQuarry Bank\t\t9.60\t21.00\t0:30\t10:56
SS4\tQuarry Bank (II)\t7.25\t\t7.25\t\t10:59
TC4A\tService in\t\t14.80\t22.05\t0:34\t11:33
TC4B\tService out\t\t\t\t0:20\t11:53
RZ2\tRefuel Larchwater\t\t1.10\t1.10\t\t
TC5\tLong Rigg\t\t24.30\t24.30\t0:36\t12:29
SS5\tLong Rigg (I)\t16.90\t\t16.90\t\t12:32
TC5A\tRemote service in\t\t12.40\t29.30\t0:38\t13:10
TC5B\tRemote service out\t\t\t\t0:10\t13:20
TC6\tNab Wood\t\t21.60\t21.60\t0:35\t13:55
SS6\tNab Wood\t9.30\t\t9.30\t\t13:58
TC6A\tRegroup in\t\t27.50\t36.80\t0:52\t14:50
TC6B\tRegroup out / Service in\t\t\t\t0:20\t15:10
TC6C\tService out / Parc fermé in\t\t\t\t0:45\t15:55
Leg 2\t\t\t\t\t\t
TC6D\tParc fermé out / Service in\t\t\t\t\t07:30
TC6E\tService out\t\t\t\t0:15\t07:45
RZ3\tRefuel Larchwater\t\t1.10\t1.10\t\t
TC7\tLong Rigg\t\t24.30\t24.30\t0:36\t08:21
SS7\tLong Rigg (II)\t16.90\t\t16.90\t\t08:24
TC8\tGreat Coppice\t\t15.20\t32.10\t0:44\t09:08
SS8\tGreat Coppice (I)\t13.75\t\t13.75\t\t09:11
TC8A\tService in\t\t19.40\t33.15\t0:46\t09:57
TC8B\tService out\t\t\t\t0:20\t10:17
RZ4\tRefuel Larchwater\t\t1.10\t1.10\t\t
TC9\tGreat Coppice\t\t20.50\t20.50\t0:33\t10:50
SS9\tGreat Coppice (II)\t13.75\t\t13.75\t\t10:53
TC9A\tFinish Larchwater\t\t19.40\t33.15\t0:46\t11:39
`;

export const DEMO_EVENT_NAME = 'Larchwater Stages';
export const DEMO_TIME_ZONE = 'Europe/London';
