import type { ConditionName } from '@halfshaft/itinerary';
import type { Counter, ReadingSpec } from '@halfshaft/lifing';
import type { Choice } from '@/components/choice-group';
import type { SelectOption } from '@/components/select-field';
import { CAR_PLACE_NAMES } from '../car-plan/car-places';
import { COUNTER_UNITS } from './units';

export const KIND_CHOICES: readonly Choice[] = [
  { value: 'job', label: 'Job', hint: 'One piece of work.' },
  { value: 'round', label: 'Round', hint: 'Several looks by one person at one place, closed together.' },
];

export const PLACE_OPTIONS: readonly SelectOption[] = Object.entries(CAR_PLACE_NAMES).map(
  ([value, label]) => ({ value, label }),
);

export const COUNTER_OPTIONS: readonly SelectOption[] = (Object.keys(COUNTER_UNITS) as Counter[]).map(
  (counter) => ({ value: counter, label: COUNTER_UNITS[counter].label }),
);

const READING_KINDS: Record<ReadingSpec['kind'], string> = {
  wear: 'Wear: gets less with use',
  level: 'Level, or amount filled up',
  setValue: 'Set value, to be inside a band',
  passFail: 'Pass or fail',
  hint: 'Hint only',
};
export const READING_KIND_OPTIONS: readonly SelectOption[] = Object.entries(READING_KINDS).map(
  ([value, label]) => ({ value, label }),
);

export const DECIMAL_OPTIONS: readonly SelectOption[] = ['12', '1.2', '0.12', '0.012', '0.0012'].map(
  (label, decimals) => ({ value: String(decimals), label: `like ${label}` }),
);

export const CONDITION_WORDS: Record<ConditionName, string> = {
  dust: 'Dust',
  water: 'Water and mud',
  rough: 'Rough road',
  night: 'Night',
  jumps: 'Jumps',
};

export const COMBINE_CHOICES: readonly Choice[] = [
  { value: 'largest', label: 'Only the worst counts' },
  { value: 'sum', label: 'They add up' },
];
