import type { CarRow } from '@halfshaft/contract';
import type { Choice } from '@/components/choice-group';

export const DRIVE_WORDS: Record<CarRow['drive'], string> = {
  front: 'Front-wheel drive',
  rear: 'Rear-wheel drive',
  four: 'Four-wheel drive',
};

export const SURFACE_WORDS: Record<CarRow['surface'], string> = {
  gravel: 'Gravel',
  tarmac: 'Tarmac',
  snow: 'Snow',
};

const choicesOf = (words: Record<string, string>): Choice[] =>
  Object.entries(words).map(([value, label]) => ({ value, label }));

export const DRIVE_CHOICES = choicesOf(DRIVE_WORDS);
export const SURFACE_CHOICES = choicesOf(SURFACE_WORDS);
