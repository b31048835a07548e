import type { ConditionName } from '@halfshaft/itinerary';
import type { Counter, JobCard, ReadingSpec } from '@halfshaft/lifing';

/** One limit as typed: `every` and `tolerance` in the unit a person thinks in (km, hours, pieces). */
export interface LimitForm {
  counter: Counter;
  every: string;
  tolerance: string;
}

/** One reading as typed: limits as read off the gauge, positions parted by spaces. */
export interface ReadingForm {
  readingId: string;
  name: string;
  kind: ReadingSpec['kind'];
  unit: string;
  decimals: string;
  positions: string;
  low: string;
  high: string;
  required: boolean;
}

/** A card as its form holds it: what is in a text box is text. */
export interface CardForm {
  name: string;
  kind: JobCard['kind'];
  place: JobCard['place'];
  fitsNewPart: boolean;
  limits: LimitForm[];
  minutes: string;
  people: string;
  /** One a line. */
  looks: string;
  /** `YYYY-MM-DD`, or empty. */
  dueDate: string;
  /** Percent faster; empty where the condition does not matter. */
  conditions: Record<ConditionName, string>;
  combineConditions: JobCard['combineConditions'];
  readings: ReadingForm[];
  needsSignature: boolean;
  leastServiceMinutes: string;
  remoteAllowed: boolean;
  caution: string;
  /** One a line. */
  tools: string;
  instruction: string;
}

export const CONDITION_NAMES: readonly ConditionName[] = ['dust', 'water', 'rough', 'night', 'jumps'];

export const NEW_LIMIT: LimitForm = { counter: 'stageMetres', every: '', tolerance: '0' };

export const NEW_READING: ReadingForm = {
  readingId: '',
  name: '',
  kind: 'wear',
  unit: 'mm',
  decimals: '0',
  positions: '',
  low: '',
  high: '',
  required: false,
};

export const NEW_CARD: CardForm = {
  name: '',
  kind: 'job',
  place: 'wholeCar',
  fitsNewPart: false,
  limits: [{ counter: 'services', every: '1', tolerance: '0' }],
  minutes: '5',
  people: '1',
  looks: '',
  dueDate: '',
  conditions: { dust: '', water: '', rough: '', night: '', jumps: '' },
  combineConditions: 'largest',
  readings: [],
  needsSignature: false,
  leastServiceMinutes: '0',
  remoteAllowed: true,
  caution: '',
  tools: '',
  instruction: '',
};
