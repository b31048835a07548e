import { foldWords } from './fold-words';
import type { CardField } from './model';

/** The columns in the order they are written, each with its heading. */
export const HEADINGS: Record<CardField, string> = {
  name: 'Name',
  kind: 'Kind',
  place: 'Place',
  every: 'Every',
  tolerance: 'Tolerance',
  dueDate: 'Due date',
  minutes: 'Minutes',
  people: 'People',
  shortestService: 'Shortest service (min)',
  remote: 'At a remote service',
  dust: 'Dust %',
  water: 'Water %',
  rough: 'Rough %',
  night: 'Night %',
  jumps: 'Jumps %',
  together: 'Conditions together',
  newPart: 'New part',
  looks: 'Looks',
  readings: 'Readings',
  signature: 'Second signature',
  caution: 'Caution',
  tools: 'Tools',
  instruction: 'Instruction',
  starter: 'Starter card',
};

export const FIELDS = Object.keys(HEADINGS) as readonly CardField[];

/** Other words people head these columns with. */
const OTHER_HEADINGS: Partial<Record<CardField, readonly string[]>> = {
  name: ['card', 'job'],
  place: ['where'],
  every: ['how often', 'limit', 'limits', 'interval'],
  dueDate: ['date', 'due by'],
  minutes: ['min', 'time', 'minutes each'],
  people: ['persons'],
  shortestService: ['shortest service'],
  remote: ['remote', 'remote service'],
  newPart: ['fits a new part', 'new part fitted'],
  signature: ['signature'],
};

const FIELD_OF_HEADING = new Map<string, CardField>(
  FIELDS.flatMap((field) =>
    [HEADINGS[field], ...(OTHER_HEADINGS[field] ?? [])].map((words) => [foldWords(words), field] as const),
  ),
);

/** Null when no column is called so. */
export function fieldOfHeading(heading: string): CardField | null {
  return FIELD_OF_HEADING.get(foldWords(heading)) ?? null;
}
