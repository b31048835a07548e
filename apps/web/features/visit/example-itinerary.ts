export const EXAMPLE_EVENT_NAME = 'An invented weekend';

/** An invented event of two legs, as an itinerary is pasted from a spreadsheet. It has no dates, so it begins on the first day asked for. */
export const EXAMPLE_ITINERARY = `TC/SS;Location;SS km;Road km;Total km;Target time;First car due;Gap;Section
Leg 1;;;;;;;;
TC0;Start Saltmarch;;0.00;;;08:00;;1
TC1;Oxmere;;18.40;18.40;0:28;08:28;;
SS1;Oxmere (I);11.20;;11.20;;08:31;0:03;
TC2;Fernhag;;14.60;25.80;0:34;09:05;;
SS2;Fernhag (I);8.95;;8.95;;09:08;0:03;
TC3;Skelrigg;;16.30;25.25;0:36;09:44;;
SS3;Skelrigg (I);15.70;;15.70;;09:47;0:03;
TC3A;Regroup in;;21.50;37.20;0:50;10:37;;
TC3B;Regroup out / Service in;;0.00;0.00;0:15;10:52;;2
TC3C;Service out;;0.00;0.00;0:30;11:22;;
RZ1;Refuel;;1.20;1.20;;;;
TC4;Oxmere;;17.20;18.40;0:28;11:50;;
SS4;Oxmere (II);11.20;;11.20;;11:53;0:03;
TC5;Fernhag;;14.60;25.80;0:34;12:27;;
SS5;Fernhag (II);8.95;;8.95;;12:30;0:03;
TC6;Skelrigg;;16.30;25.25;0:36;13:06;;
SS6;Skelrigg (II);15.70;;15.70;;13:09;0:03;
TC6A;Service in;;21.50;37.20;0:50;13:59;;
TC6B;Service out;;0.00;0.00;0:45;14:44;;
TC6C;Parc fermé in;;2.00;2.00;0:10;14:54;;
Leg 2;;;;;;;;
TC6D;Parc fermé out / Service in;;0.00;;;07:30;;3
TC6E;Service out;;0.00;0.00;0:15;07:45;;
TC7;Larkhollow;;24.30;24.30;0:36;08:21;;
SS7;Larkhollow (I);12.40;;12.40;;08:24;0:03;
TC7A;Remote service in;;9.80;22.20;0:32;08:56;;
TC7B;Remote service out;;0.00;0.00;0:15;09:11;;
TC8;Thornmire;;12.50;12.50;0:20;09:31;;
SS8;Thornmire;10.85;;10.85;;09:34;0:03;
TC9;Larkhollow;;15.20;26.05;0:38;10:12;;
SS9;Larkhollow (II);12.40;;12.40;;10:15;0:03;
TC9A;Finish Saltmarch;;26.40;38.80;0:52;11:07;;
`;
