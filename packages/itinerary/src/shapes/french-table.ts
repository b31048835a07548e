import { PLAIN_ONE_DAY } from './plain-events';
import { type ItineraryShape, SHAPE_OPTIONS } from './shape';

/** A French-speaking event: CH and ES, the date in words, hours with an h. */
export const FRENCH_TABLE: ItineraryShape = {
  title: 'a French table with CH and ES, the date in words and times with an h',
  options: SHAPE_OPTIONS,
  plain: PLAIN_ONE_DAY.replace('TC0;', 'Leg 1, 2026-06-13;;;;;;\nTC0;'),
  problems: [],
  text: `CH/ES\tLieu\tES (km)\tLiaison (km)\tTotal (km)\tTemps imparti\t1ère voiture
Étape 1 - samedi 13 juin 2026
CH0\tStart Moorwald\t\t\t\t\t8h30
CH1\tHollergraben\t\t18,40\t18,40\t0h28\t8h58
ES1\tHollergraben (I)\t8,10\t\t8,10\t0h03\t9h01
CH2\tEichberg\t\t12,25\t20,35\t0h32\t9h33
ES2\tEichberg (I)\t11,55\t\t11,55\t0h03\t9h36
CH2A\tService in\t\t21,30\t32,85\t0h45\t10h21
CH2B\tService out\t\t\t\t0h30\t10h51
CH3\tHollergraben\t\t18,40\t18,40\t0h28\t11h19
ES3\tHollergraben (II)\t8,10\t\t8,10\t0h03\t11h22
CH4\tEichberg\t\t12,25\t20,35\t0h32\t11h54
ES4\tEichberg (II)\t11,55\t\t11,55\t0h03\t11h57
CH4A\tFinish Moorwald\t\t19,75\t31,30\t0h44\t12h41
Totaux\t\t39,30\t102,35\t141,65\t\t
`,
};
