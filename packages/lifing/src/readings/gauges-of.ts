import type { JobCard, ReadingSpec } from '../job-card';
import { STARTER_GAUGES, STARTER_TOPPED_UP, type StarterReading } from './starter-gauges';

/** A reading of one card, and how it is judged. */
export interface Gauge {
  /** Read with this card. */
  card: JobCard;
  spec: ReadingSpec;
  /** Fits a new part; the card itself where no other card of the car does. */
  remedy: JobCard;
  /** What the remedy reads of the new part; null when nothing. */
  whenNew: ReadingSpec | null;
  isTyre: boolean;
  /** The amount that went in is read, against a limit on 100 stage km. */
  isToppedUp: boolean;
}

/**
 * Every reading of a car's cards, in their order. What the starter set reads on a round belongs to the job that puts it
 * right (pads are read at the corner and changed by "Front brake pads: change"); a team's own reading to its own card.
 *
 * @example
 * gaugesOf(starterCards('four', 'gravel')).find(({ spec }) => spec.id === 'pads')?.remedy.name
 * // 'Front brake pads: change'
 */
export function gaugesOf(cards: readonly JobCard[]): Gauge[] {
  return cards.flatMap((card) => card.readings.map((spec) => gaugeOf(card, spec, cards)));
}

function gaugeOf(card: JobCard, spec: ReadingSpec, cards: readonly JobCard[]): Gauge {
  const known = STARTER_GAUGES.find(
    (gauge) => isReadWith(gauge.readWith, card) && isThe(gauge.reading, spec),
  );
  const remedy = known && cards.find(({ starterId }) => starterId === known.remedy);
  const { whenNew } = known ?? { whenNew: null };
  return {
    card,
    spec,
    remedy: remedy ?? card,
    whenNew: (whenNew && remedy?.readings.find((each) => isThe(whenNew, each))) ?? null,
    isTyre: known?.isTyre ?? false,
    isToppedUp: STARTER_TOPPED_UP.some(
      ({ readWith, reading }) => isReadWith([readWith], card) && isThe(reading, spec),
    ),
  };
}

function isReadWith(readWith: readonly string[], { starterId }: JobCard): boolean {
  return starterId !== null && readWith.includes(starterId);
}

function isThe(known: StarterReading, spec: ReadingSpec): boolean {
  return spec.id === known.id || spec.name === known.name;
}
