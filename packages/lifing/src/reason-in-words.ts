import type { EpochSeconds, ServiceId } from '@halfshaft/itinerary';
import { amountInWords } from './amount-in-words';
import { isInPieces } from './counters';
import { intervalInWords } from './interval-in-words';
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
      return `won't reach ${next}: ${passingInWords(reason, names)}`;
    case 'withinTolerance':
      return `may be overrun to ${next}: ${passingInWords(reason, names)}`;
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
  const { counter, limit } = reason;
  if (counter === 'date') return `its date has passed: due ${names.clock(limit ?? 0)}`;
  // "1 service was passed" is true and says nothing.
  if (counter !== null && limit === 1 && isInPieces(counter)) return intervalInWords({ counter, every: 1 });
  const was = isPlural(reason) ? 'were' : 'was';
  return reason.passedAt === null
    ? `${limitInWords(reason)} ${was} passed before this event`
    : `${limitInWords(reason)} ${was} passed${placeInWords(reason, names)}`;
}

function laterPassing(reason: VerdictReason, names: ReasonNames): string {
  const { counter, limit, wearAtNextChance } = reason;
  if (counter === 'date') return `: due ${names.clock(limit ?? 0)}`;
  if (limit !== null && limit === wearAtNextChance) return ' and is due there';
  if (counter === 'services' || counter === 'days') return '';
  return `: ${passingInWords(reason, names)}`;
}

function passingInWords(reason: VerdictReason, names: ReasonNames): string {
  return `${limitInWords(reason)} ${isPlural(reason) ? 'are' : 'is'} passed${placeInWords(reason, names)}`;
}

function isPlural({ counter, limit }: VerdictReason): boolean {
  return counter !== null && counter !== 'date' && isInPieces(counter) && limit !== 1;
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
