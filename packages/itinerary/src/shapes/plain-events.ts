/** Two legs: eight stages, two loops of the same roads, remote service and a night. */
export const PLAIN_TWO_LEGS = `TC/SS;Location;SS km;Road km;Total km;Target time;First car due;Gap;Section
Leg 1, 2026-06-12;;;;;;;;
TC0;Start Lindach;;;;;13:00;;1
RZ1;Refuel, distance to next refuel;(17,65);(42,10);(59,75);;;;
TC1;Hochmoos;;24,30;24,30;0:35;13:35;;
SS1;Hochmoos (I);9,80;;9,80;;13:38;;
TC2;Steinbruch am Wald;;11,20;21,00;0:28;14:06;;
SS2;Steinbruch am Wald (I);7,85;;7,85;;14:11;0:05;
TC2A;Remote service in;;6,60;14,45;0:20;14:31;;
TC2B;Remote service out;;;;0:15;14:46;;
TC3;Hochmoos;;14,00;14,00;0:25;15:11;;
SS3;Hochmoos (II);9,80;;9,80;;15:14;;
TC4;Steinbruch am Wald;;11,20;21,00;0:28;15:42;;
SS4;Steinbruch am Wald (II);7,85;;7,85;;15:47;0:05;
TC4A;Regroup in;;28,40;36,25;0:47;16:34;;
TC4B;Regroup out / Service in;;;;0:20;16:54;;2
TC4C;Service out;;;;0:45;17:39;;
RZ2;Refuel;;1,50;1,50;;;;
TC4D;Parc fermé in;;2,50;2,50;0:10;17:49;;
Leg 2, 2026-06-13;;;;;;;;
TC4E;Parc fermé out / Service in;;;;;07:30;;3
TC4F;Service out;;;;0:15;07:45;;
TC5;Auwald;;31,75;31,75;0:45;08:30;;
SS5;Auwald (I);16,65;;16,65;;08:33;;
TC6;Kalte Rinne;;19,53;36,18;0:44;09:17;;
SS6;Kalte Rinne;12,05;;12,05;;09:20;;
TC6A;Regroup in;;22,10;34,15;0:50;10:10;;
TC6B;Regroup out / Service in;;;;0:20;10:30;;4
TC6C;Service out;;;;0:30;11:00;;
TC7;Auwald;;31,75;31,75;0:45;11:45;;
SS7;Auwald (II);16,65;;16,65;;11:48;;
TC7A;Finish Lindach;;26,00;42,65;0:58;12:46;;
`;

/** One day: two stages driven twice, one service. */
export const PLAIN_ONE_DAY = `TC/SS;Location;SS km;Road km;Total km;Target time;First car due
TC0;Start Moorwald;;;;;08:30
TC1;Hollergraben;;18,40;18,40;0:28;08:58
SS1;Hollergraben (I);8,10;;8,10;;09:01
TC2;Eichberg;;12,25;20,35;0:32;09:33
SS2;Eichberg (I);11,55;;11,55;;09:36
TC2A;Service in;;21,30;32,85;0:45;10:21
TC2B;Service out;;;;0:30;10:51
TC3;Hollergraben;;18,40;18,40;0:28;11:19
SS3;Hollergraben (II);8,10;;8,10;;11:22
TC4;Eichberg;;12,25;20,35;0:32;11:54
SS4;Eichberg (II);11,55;;11,55;;11:57
TC4A;Finish Moorwald;;19,75;31,30;0:44;12:41
`;
