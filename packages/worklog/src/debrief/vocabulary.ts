import type { CarPlace, IncidentCode } from '@halfshaft/lifing';

/**
 * What crews say and what it points to: common practice, no source. Words are written small; a phrase stands for every
 * word that begins so ("vibrat" for "vibrating"), and one that ends in a space for just itself ("hot " but no "hotel").
 * Left and right are said, never near and off side, which change with the country.
 */
type Vocabulary<Meaning extends string> = readonly (readonly [Meaning, readonly string[]])[];

/** The first that is met counts, so a corner goes before what sits in every corner. */
export const PLACE_WORDS: Vocabulary<CarPlace> = [
  ['frontLeft', ['front left', 'left front', 'fl ']],
  ['frontRight', ['front right', 'right front', 'fr ']],
  ['rearLeft', ['rear left', 'left rear', 'back left', 'left back', 'rl ']],
  ['rearRight', ['rear right', 'right rear', 'back right', 'right back', 'rr ']],
  ['underCar', ['under the car', 'underneath', 'gearbox', 'diff', 'propshaft', 'sump', 'exhaust']],
  ['cockpit', ['pedal', 'seat', 'harness', 'intercom', 'handbrake', 'trip meter', 'dash', 'steering wheel']],
  ['engineBay', ['engine', 'bonnet', 'radiator', 'oil ', 'misfir', 'overheat']],
  ['body', ['door', 'mirror', 'windscreen', 'wiper', 'lamp', 'bumper', 'wing ']],
  ['boot', ['boot ', 'spare wheel', 'jack ']],
];

export const INCIDENT_WORDS: Vocabulary<IncidentCode> = [
  ['off', ['went off', 'off the road', 'an off ', 'ditch']],
  ['contact', ['hit a ', 'hit the ', 'we hit ', 'clipped', 'touched']],
  ['hardLanding', ['hard landing', 'landed hard', 'heavy landing', 'landed heavy', 'landed heavily']],
  ['ford', ['ford ', 'fords ', 'water splash', 'watersplash']],
  ['puncture', ['punctur', 'flat tyre', 'tyre flat']],
  ['hot', ['hot ', 'overheat', 'boil']],
  [
    'softPedal',
    ['soft pedal', 'pedal soft', 'pedal is soft', 'pedal went', 'long pedal', 'pedal long', 'spongy'],
  ],
  ['electrics', ['electric', 'misfir', 'warning light', 'battery', 'alternator', 'cut out']],
  ['fuelSmell', ['fuel smell', 'smell of fuel', 'smells of fuel', 'petrol smell', 'smell of petrol']],
  ['pullsAside', ['pulls', 'pulling', 'pulled']],
];

/** By the id of the starter card without its `starter:`. */
export const CARD_WORDS: Vocabulary<string> = [
  ['wheel-nuts', ['vibrat', 'wheel loose', 'loose wheel', 'wheel nut']],
  ['hub-play', ['vibrat', 'knock', 'hub ', 'wheel bearing']],
  ['driveshafts', ['driveshaft', 'clicking', 'clicks in the turn']],
  ['geometry', ['pulls', 'pulling', 'steering wheel is off', 'steering not straight']],
  ['front-pads', ['front brake', 'pads', 'brakes fade', 'brake fade']],
  ['rear-pads', ['rear brake', 'pads']],
  ['bleed-brakes', ['pedal soft', 'soft pedal', 'pedal is soft', 'spongy', 'pedal long', 'long pedal']],
  ['handbrake', ['handbrake']],
  ['aux-belt', ['belt squeal', 'squeal']],
  ['throttle', ['throttle']],
  ['spark-plugs', ['misfir']],
  ['oil-level', ['oil light', 'oil pressure']],
  ['gearbox-oil', ['gearbox', 'gear change', 'gearchange', 'jumps out of gear']],
  ['harness', ['harness', 'belts loose']],
  ['night-lamps', ['lamp']],
];

/** What a line says of a vocabulary, in its order. */
export function meaningsIn<Meaning extends string>(vocabulary: Vocabulary<Meaning>, line: string): Meaning[] {
  const plain = ` ${line
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim()} `;
  return vocabulary
    .filter(([, phrases]) => phrases.some((phrase) => plain.includes(` ${phrase}`)))
    .map(([meaning]) => meaning);
}
