import { z } from 'zod';
import { driveName, surfaceName } from './car';
import { itineraryText } from './event';
import { wholeNumber } from './words';

/** What the first two minutes ask for, before any account. */
export const visitInput = z.object({
  drive: driveName,
  surface: surfaceName,
  itinerary: itineraryText,
  people: wholeNumber('The number of people', 1, 20),
  startPosition: wholeNumber('The start position', 1, 300),
});
export type Visit = z.infer<typeof visitInput>;
