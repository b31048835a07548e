/** The columns of the table, by meaning. */
export type ColumnKey =
  | 'id'
  | 'location'
  | 'stageKm'
  | 'roadKm'
  | 'totalKm'
  | 'target'
  | 'due'
  | 'gap'
  | 'section'
  | 'interval'
  | 'role'
  | 'repeatOf';

/** The heading each column is written under, in the order itineraries are published. */
export const COLUMN_HEADINGS: Readonly<Record<ColumnKey, string>> = {
  id: 'TC/SS',
  location: 'Location',
  stageKm: 'SS km',
  roadKm: 'Road km',
  totalKm: 'Total km',
  target: 'Target time',
  due: 'First car due',
  gap: 'Gap',
  section: 'Section',
  interval: 'Start interval',
  role: 'Role',
  repeatOf: 'Repeat of',
};

/** Without these a table cannot be read. */
export const NECESSARY_COLUMNS: readonly ColumnKey[] = ['id', 'location', 'stageKm', 'roadKm', 'due'];

/** Words that say nothing about which column it is. */
const FILLERS = new Set(
  'km kms kilometres kilometers dist distance length time times hh mm h min day the of in no nr number local'.split(
    ' ',
  ),
);

/** Each heading's meaning-bearing words, the fillers left out. */
const SYNONYMS: Readonly<Record<ColumnKey, readonly string[]>> = {
  id: [
    'tc ss',
    'ss tc',
    'tc',
    'control',
    'control stage',
    'control or stage',
    'tc stage',
    'tc or ss',
    'code',
  ],
  location: [
    'location',
    'location stage name',
    'location or stage name',
    'location stage',
    'stage name',
    'name',
    'place',
    'control name',
  ],
  stageKm: ['ss', 'stage', 'stages', 'special stage', 'special', 'competitive'],
  roadKm: ['road', 'liaison', 'liaison road', 'road liaison', 'road section', 'liaison section'],
  totalKm: ['total'],
  target: ['target', 'allowed', 'target allowed'],
  due: [
    'first car due',
    'first car',
    '1st car due',
    '1st car',
    'due',
    'car 1 due',
    'first due',
    'clock',
    'first car clock',
  ],
  gap: ['gap', 'gap to start', 'start gap', 'gap tc to start', 'gap to stage start'],
  section: ['section', 'sections', 'sec', 'sect'],
  interval: ['start interval', 'interval', 'intervals', 'start intervals'],
  role: ['role', 'roles'],
  repeatOf: ['repeat', 'repeats'],
};

const COLUMN_BY_WORDS: ReadonlyMap<string, ColumnKey> = new Map(
  (Object.keys(SYNONYMS) as ColumnKey[]).flatMap((key) =>
    SYNONYMS[key].map((words) => [words, key] as const),
  ),
);

/**
 * The column a heading means, whatever its case, punctuation, accents and unit; null when it means none.
 *
 * @example
 * columnOf('1st car due (hh:mm)') // 'due'
 */
export function columnOf(heading: string): ColumnKey | null {
  const words = heading
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^a-z0-9]+/)
    .filter((word) => word !== '' && !FILLERS.has(word));
  return COLUMN_BY_WORDS.get(words.join(' ')) ?? null;
}

/** Every word that headings are made of, fillers included. */
export const HEADING_WORDS: ReadonlySet<string> = new Set([
  ...FILLERS,
  ...Object.values(SYNONYMS).flatMap((all) => all.flatMap((words) => words.split(' '))),
]);
