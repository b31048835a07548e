import type { EpochSeconds, ServiceId } from '@halfshaft/itinerary';
import { amountInWords } from './amount-in-words';
import type { LimitPlace, VerdictReason } from './model';

/** How the screen writes what this package does not know: the event's clock and the names of its services. */
export interface ReasonNames {
  /** An instant as the event's own clock shows it, with the day where that is not today. */
  clock(at: EpochSeconds): string;
  /** Such as "Service C". */
  serviceName(id: ServiceId): string;
}

/**
 * One reason of a verdict as a plain sentence without a full stop, to stand after "do now:", "if time:" or "leave:".
 * Kilometres are cut to one decimal.
 *
 * @example
 * reasonInWords(reason, names)
 * // "won't reach Service C: 60 stage km is passed on SS9 at km 84.2, about 14:32"
 */
export function reasonInWords(reason: VerdictReason, names: ReasonNames): string {
  const next = reason.nextChance === null ? 'the finish' : names.serviceName(reason.nextChance);
  switch (reason.code) {
    case 'past':
      return pastInWords(reason, names);
    case 'wontReach':
      return `won't reach ${next}: ${limitInWords(reason)} is passed${placeInWords(reason, names)}`;
    case 'withinTolerance':
      return `may be overrun to ${next}: ${limitInWords(reason)} is passed${placeInWords(reason, names)}`;
    case 'dateFalls':
      return `its date comes before ${next}: due ${names.clock(reason.limit ?? 0)}`;
    case 'reaches':
      return `lasts to ${next}${laterPassing(reason, names)}`;
    case 'lasts':
      return reason.counter === null ? 'has no limit of its own' : 'lasts to the finish';
    case 'notHere':
      return reason.nextChance === null
        ? 'cannot be done at this service, and no later one will do'
        : `cannot be done at this service, next chance ${next}`;
  }
}

function pastInWords(reason: VerdictReason, names: ReasonNames): string {
  if (reason.counter === 'date') return `its date has passed: due ${names.clock(reason.limit ?? 0)}`;
  if (reason.counter === 'services' && reason.limit === 1) return 'every service';
  if (reason.counter === 'days' && reason.limit === 1) return 'every day';
  return reason.passedAt === null
    ? `${limitInWords(reason)} was passed before the event`
    : `${limitInWords(reason)} was passed${placeInWords(reason, names)}`;
}

function laterPassing(reason: VerdictReason, names: ReasonNames): string {
  if (reason.counter === 'date') return `: due ${names.clock(reason.limit ?? 0)}`;
  if (reason.counter === 'services' || reason.counter === 'days') return ' and is due again there';
  return `: ${limitInWords(reason)} is passed${placeInWords(reason, names)}`;
}

function limitInWords({ counter, limit }: VerdictReason): string {
  if (counter === null || counter === 'date' || limit === null) return 'its limit';
  return amountInWords(counter, limit);
}

function placeInWords({ passedAt }: VerdictReason, names: ReasonNames): string {
  if (passedAt === null) return '';
  return ` ${whereInWords(passedAt)}, about ${names.clock(passedAt.at)}`;
}

function whereInWords({ stageId, routeMetres }: LimitPlace): string {
  const kilometres = (Math.floor(routeMetres / 100) / 10).toFixed(1);
  return `${stageId === null ? 'on the road' : `on ${stageId}`} at km ${kilometres}`;
}
