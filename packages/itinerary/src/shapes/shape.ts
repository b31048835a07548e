import type { ReadItineraryOptions } from '../reading/read-itinerary-model';

/** An invented itinerary in one of the layouts they are published and pasted in. */
export interface ItineraryShape {
  title: string;
  text: string;
  options: ReadItineraryOptions;
  /** The same event as a plain table, to be read by the strict reader; null where nothing is to be read. */
  plain: string | null;
  /** Exactly what is told of it, as `row:column code`, in order. */
  problems: string[];
}

/** The day and zone of the invented events. */
export const SHAPE_OPTIONS: ReadItineraryOptions = {
  timeZone: 'Europe/Vienna',
  startDate: '2026-06-12',
  roadTimedFrom: 'stageStart',
};
