import type { Choice } from '@/components/choice-group';

/** Whom the times of an itinerary are printed for. */
export const PRINTED_FOR_CHOICES: readonly Choice[] = [
  { value: 'positionOne', label: 'The first car', hint: 'Start position 1: the usual way.' },
  { value: 'carZero', label: 'A car 0 ahead of it', hint: 'The first car is due one start interval later.' },
];
