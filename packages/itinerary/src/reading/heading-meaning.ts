import { type ColumnKey, columnOf } from '../table-columns';
import { foldWords } from './fold-words';

export interface HeadingMeaning {
  key: ColumnKey | null;
  unit: 'miles' | 'minutes' | null;
  /** It says that the times are those of car 0. */
  isForCarZero: boolean;
}

const MILES = new Set(['mi', 'mile', 'miles', 'mls', 'mileage']);
const FILLERS = new Set(
  'km kms kilometres kilometers distance dist length lange longueur longitud lunghezza hh mm h min mins minutes hours de du des la le el il di der die das des of the in no nr'.split(
    ' ',
  ),
);

/** Headings beyond those of the strict table, folded, without fillers and units. */
const WIDER: Readonly<Partial<Record<ColumnKey, readonly string[]>>> = {
  id: [
    'ctrl',
    'kontrolle',
    'controle',
    'controllo',
    'zk',
    'ch',
    'control code',
    'control point',
    'controls',
    'point',
    'id',
  ],
  location: [
    'ort',
    'bezeichnung',
    'lieu',
    'localisation',
    'localizacion',
    'lugar',
    'localita',
    'luogo',
    'description',
    'venue',
    'stage or location',
    'control or stage name',
    'location and stage name',
    'location control',
  ],
  stageKm: ['wp', 'sp', 'es', 'ps', 'special stages', 'wertungsprufung', 'sonderprufung', 'competitive'],
  roadKm: [
    'verbindung',
    'verbindungsetappe',
    'transfer',
    'enlace',
    'trasferimento',
    'non competitive',
    'link',
    'road link',
    'transport',
    'strasse',
    'route',
  ],
  totalKm: ['gesamt', 'totale', 'totaux', 'section total', 'sum'],
  target: [
    'sollzeit',
    'fahrzeit',
    'temps imparti',
    'tiempo',
    'tiempo concedido',
    'tempo',
    'tempo imposto',
    'allotted',
    'time allowed',
    'target time',
    'time',
  ],
  due: [
    'first car time',
    'erstes fahrzeug',
    '1 fahrzeug',
    'startzeit 1 fahrzeug',
    '1ere voiture',
    'premiere voiture',
    'primer coche',
    '1er coche',
    'prima vettura',
    '1 vettura',
    'scheduled',
    'zeit',
    'uhrzeit',
    'heure',
    'hora',
    'ora',
    'scheduled time',
    'due time',
    'time due',
    'car 1',
    'first car scheduled',
    'car 0',
    'car 0 due',
    'car zero',
    'car zero due',
    'due car 0',
    'scheduled car 0',
  ],
  gap: ['gap tc ss', 'tc to ss', 'tc to start'],
  section: ['abschnitt', 'sektion', 'seccion', 'sezione'],
};
const KEY_BY_WORDS: ReadonlyMap<string, ColumnKey> = new Map(
  (Object.entries(WIDER) as [ColumnKey, readonly string[]][]).flatMap(([key, all]) =>
    all.map((words) => [words, key] as const),
  ),
);
/** Codes that say "control or stage" when at least two stand together. */
const CODE_WORDS = new Set('tc atc mtc mc ss sss rz zr pc cp zk wp sp ch es co ps control stage'.split(' '));

/**
 * What a heading means, whatever its language among English, German, French, Spanish and Italian, and the unit it
 * names. The strict table's own headings come first, so that what it reads is read the same here.
 *
 * @example
 * headingMeaning('Liaison (miles)') // { key: 'roadKm', unit: 'miles', isForCarZero: false }
 */
export function headingMeaning(heading: string): HeadingMeaning {
  const words = foldWords(heading).split(' ');
  const miles = words.some((word) => MILES.has(word));
  const bare = miles ? words.filter((word) => !MILES.has(word)) : words;
  const key = columnOf(bare.join(' ')) ?? widerColumnOf(bare);
  const isTime = key === 'target' || key === 'gap';
  const minutes =
    isTime && bare.some((word) => ['min', 'mins', 'minutes'].includes(word)) && !bare.includes('h');
  return {
    key,
    unit: miles ? 'miles' : minutes ? 'minutes' : null,
    isForCarZero: key === 'due' && /\bcar (?:0|zero)\b/.test(words.join(' ')),
  };
}

function widerColumnOf(words: readonly string[]): ColumnKey | null {
  const telling = words.filter((word) => !FILLERS.has(word));
  const key = KEY_BY_WORDS.get(telling.join(' ')) ?? columnOf(telling.join(' '));
  if (key) return key;
  return telling.length > 1 && telling.every((word) => CODE_WORDS.has(word)) ? 'id' : null;
}
