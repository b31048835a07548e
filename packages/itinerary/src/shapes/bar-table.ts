import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A table drawn with bars, as chats and plain-text mails carry it, with Italian codes. */
export const BAR_TABLE: ItineraryShape = {
  title: 'a table drawn with bars and a ruler, CO and PS',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY.replace('TC0;', 'Leg 1, 2026-06-14;;;;;;\nTC0;'),
  problems: [],
  text: `| CO/PS | Località | PS km | Trasferimento km | Totale km | Tempo | Prima vettura |
|-------|----------|-------|------------------|-----------|-------|---------------|
| domenica 14 giugno 2026 | | | | | | |
| CO 0 | Start Moorwald | | | | | 08:30 |
| CO 1 | Hollergraben | | 18,40 | 18,40 | 0:28 | 08:58 |
| PS 1 | Hollergraben (I) | 8,10 | | 8,10 | | 09:01 |
| CO 2 | Eichberg | | 12,25 | 20,35 | 0:32 | 09:33 |
| PS 2 | Eichberg (I) | 11,55 | | 11,55 | | 09:36 |
| CO 2A | Service in | | 21,30 | 32,85 | 0:45 | 10:21 |
| CO 2B | Service out | | | | 0:30 | 10:51 |
| CO 3 | Hollergraben | | 18,40 | 18,40 | 0:28 | 11:19 |
| PS 3 | Hollergraben (II) | 8,10 | | 8,10 | | 11:22 |
| CO 4 | Eichberg | | 12,25 | 20,35 | 0:32 | 11:54 |
| PS 4 | Eichberg (II) | 11,55 | | 11,55 | | 11:57 |
| CO 4A | Finish Moorwald | | 19,75 | 31,30 | 0:44 | 12:41 |
`,
};
