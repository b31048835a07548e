/** An invented table that reads without a problem: the quickest way to see what is wanted. */
export const EXAMPLE_TABLE = `TC/SS;Location;SS km;Road km;Target time;First car due
TC0;Start Marktplatz;;;;09:00
TC1;Eichgraben;;24.30;0:35;09:35
SS1;Eichgraben 1;12.40;;;09:38
TC2;Steinwand;;11.20;0:28;10:06
SS2;Steinwand 1;8.70;;;10:09
TC2A;Service in;;22.00;0:40;10:49
TC2B;Service out;;;0:20;11:09
TC3;Eichgraben;;24.30;0:35;11:44
SS3;Eichgraben 2;12.40;;;11:47
TC3A;Finish;;25.00;0:55;12:42
`;
