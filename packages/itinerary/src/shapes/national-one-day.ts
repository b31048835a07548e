import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A German-speaking one-day event: its own codes and headings, semicolons, decimal commas, units in the cells. */
export const NATIONAL_ONE_DAY: ItineraryShape = {
  title: 'a national one-day event with semicolons, decimal commas, units in the cells, ZK and WP',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY.replace('TC0;', 'Leg 1, 2026-06-20;;;;;;\nTC0;'),
  problems: [],
  text: `"Zeitplan ""Moorwald"" 2026";;;;;;
Etappe 1 – Samstag, 20. Juni;;;;;;
ZK/WP;Ort;WP km;Verbindung km;Gesamt km;Sollzeit;1. Fahrzeug
ZK 0;Start Moorwald;;;;;08.30 Uhr
ZK 1;Hollergraben;;18,40 km;18,40 km;28 min;08.58 Uhr
WP 1;Hollergraben (I);8,10 km;;8,10 km;3 min;09.01 Uhr
ZK 2;Eichberg;;12,25 km;20,35 km;32 min;09.33 Uhr
WP 2;Eichberg (I);11,55 km;;11,55 km;3 min;09.36 Uhr
ZK 2A;Service in;;21,30 km;32,85 km;45 min;10.21 Uhr
ZK 2B;Service out;;–;–;0:30 min;10.51 Uhr
ZK/WP;Ort;WP km;Verbindung km;Gesamt km;Sollzeit;1. Fahrzeug
ZK 3;Hollergraben;;18,40 km;18,40 km;28 min;11.19 Uhr
WP 3;Hollergraben (II);8,10 km;;8,10 km;3 min;11.22 Uhr
ZK 4;Eichberg;;12,25 km;20,35 km;32 min;11.54 Uhr
WP 4;Eichberg (II);11,55 km;;11,55 km;3 min;11.57 Uhr
ZK 4A;Finish Moorwald;;19,75 km;31,30 km;44 min;12.41 Uhr
Gesamt;;39,30 km;102,35 km;141,65 km;;
`,
};
