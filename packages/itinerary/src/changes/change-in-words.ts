import { roleText } from '../control-roles';
import { formatClock, formatDay, formatKilometres } from '../format';
import type { ServiceWindow } from '../model';
import type { IntervalBlock, ItineraryChange } from './itinerary-change';

type Of<Kind extends ItineraryChange['kind']> = Extract<ItineraryChange, { kind: Kind }>;

/**
 * A change as one sentence for the crew: what, and by how much.
 *
 * @example
 * changeInWords({ kind: 'serviceLength', service: 'service', serviceId: 'C', inControl: 'TC6B', beforeSeconds: 1200, afterSeconds: 1920 })
 * // 'Service C (TC6B) gains 12 min: 32 min instead of 20 min.'
 */
export function changeInWords(change: ItineraryChange): string {
  switch (change.kind) {
    case 'stageCancelled':
      return `${titled(change.stageId, change.name)} is cancelled: ${kilometres(change.metres)} of stage less.`;
    case 'stageAdded':
      return `${titled(change.stageId, change.name)} is new${placed(change.afterId)}: ${kilometres(change.metres)} of stage more.`;
    case 'stageLength':
      return `${change.stageId} is ${lengthChange(change, 'shorter', 'longer')}.`;
    case 'serviceCancelled':
      return `${serviceTitle(change)} is cancelled: ${duration(change.seconds)} of service less.`;
    case 'serviceAdded':
      return `${serviceTitle(change)} is new: ${duration(change.seconds)}.`;
    case 'serviceLength':
      return serviceLength(change);
    case 'timesMoved':
      return timesMoved(change);
    case 'refuelGap':
      return refuelGap(change);
    default:
      return otherChange(change);
  }
}

type Weighty =
  | 'stageCancelled'
  | 'stageAdded'
  | 'stageLength'
  | 'serviceCancelled'
  | 'serviceAdded'
  | 'serviceLength'
  | 'timesMoved'
  | 'refuelGap';

function otherChange(change: Exclude<ItineraryChange, { kind: Weighty }>): string {
  switch (change.kind) {
    case 'startInterval':
      return `In section ${change.section}, cars start ${blocks(change.after)} apart instead of ${blocks(change.before)}.`;
    case 'startPosition':
      return `From section ${change.section} on, this car starts in position ${change.after} instead of ${change.before}.`;
    case 'controlRemoved':
      return `${titled(change.id, change.name)} is no control any more.`;
    case 'controlAdded':
      return `${titled(change.id, change.name)} is a new control${placed(change.afterId)}.`;
    case 'roadLength':
      return `The road to ${change.id} is ${lengthChange(change, 'shorter', 'longer')}.`;
    case 'targetTime':
      return `The target time of ${change.id} is ${optional(change.afterSeconds)} instead of ${optional(change.beforeSeconds)}.`;
    case 'stageGap':
      return `From its control to the start of ${change.stageId} are ${duration(change.afterSeconds)} instead of ${duration(change.beforeSeconds)}.`;
    case 'stageRepeat':
      return repeatInWords(change);
    case 'roles':
      return `${change.id} is ${roleText(change.after)} instead of ${roleText(change.before)}.`;
    case 'renamed':
      return `${change.id} is called “${change.after}” instead of “${change.before}”.`;
    case 'order':
      return `${change.id} is now ${change.afterId === null ? 'the first point' : `after ${change.afterId}`}.`;
    case 'numbering':
      return `${range(change)} ${change.fromId === change.toId ? 'is' : 'are'} in ${change.of} ${change.after} instead of ${change.before}.`;
    case 'timedFrom':
      return `The road after a stage is timed from the stage’s ${change.after === 'stageStart' ? 'start' : 'finish'} instead of its ${change.before === 'stageStart' ? 'start' : 'finish'}.`;
    case 'timeZone':
      return `All times are in the zone ${change.after} instead of ${change.before}.`;
  }
}

function serviceLength(change: Of<'serviceLength'>): string {
  const seconds = change.afterSeconds - change.beforeSeconds;
  const verb = seconds > 0 ? 'gains' : 'loses';
  return `${serviceTitle(change)} ${verb} ${duration(Math.abs(seconds))}: ${duration(change.afterSeconds)} instead of ${duration(change.beforeSeconds)}.`;
}

function timesMoved(change: Of<'timesMoved'>): string {
  const by = `${duration(Math.abs(change.seconds))} ${change.seconds > 0 ? 'later' : 'earlier'}`;
  const clock = (at: number) => formatClock(at, change.timeZone);
  const day = (at: number) => formatDay(at, change.timeZone);
  const isOtherDay = day(change.beforeAt) !== day(change.afterAt);
  const at = (instant: number) => (isOtherDay ? `${clock(instant)} on ${day(instant)}` : clock(instant));
  const first = change.points === 1 ? '' : `${change.fromId} at `;
  const subject =
    change.points === 1 ? `${change.fromId} is` : `Everything from ${change.fromId} to ${change.toId} is`;
  return `${subject} ${by}: ${first}${at(change.afterAt)} instead of ${at(change.beforeAt)}.`;
}

function refuelGap({ fromId, toId, beforeMetres, afterMetres }: Of<'refuelGap'>): string {
  const way = `From ${fromId === 'start' ? 'the start' : fromId} to ${toId === 'finish' ? 'the finish' : toId}`;
  if (beforeMetres === null) return `${way} it is now ${kilometres(afterMetres)} without a refuel.`;
  return `${way} it is ${lengthChange({ beforeMetres, afterMetres }, 'less', 'more')} without a refuel.`;
}

function lengthChange(
  { beforeMetres, afterMetres }: { beforeMetres: number; afterMetres: number },
  less: string,
  more: string,
): string {
  const metres = afterMetres - beforeMetres;
  return `${kilometres(Math.abs(metres))} ${metres < 0 ? less : more}, ${kilometres(afterMetres)} instead of ${kilometres(beforeMetres)}`;
}

/** Two decimals as published; metres where that would hide the change. */
function kilometres(metres: number): string {
  return metres % 10 === 0 ? `${formatKilometres(metres)} km` : `${(metres / 1000).toFixed(3)} km`;
}

function titled(id: string, name: string): string {
  return name === '' || name === id ? id : `${id} ${name}`;
}

function placed(afterId: string | null): string {
  return afterId === null ? ', before all others' : ` after ${afterId}`;
}

function serviceTitle({
  service,
  serviceId,
  inControl,
}: {
  service: ServiceWindow['kind'];
  serviceId: string;
  inControl: string;
}): string {
  return `${service === 'service' ? 'Service' : 'Remote service'} ${serviceId} (${inControl})`;
}

function optional(seconds: number | null): string {
  return seconds === null ? 'not printed' : duration(seconds);
}

function repeatInWords({ stageId, before, after }: Of<'stageRepeat'>): string {
  if (after === null) return `${stageId} no longer repeats ${before}.`;
  return `${stageId} repeats ${after}${before === null ? '' : ` instead of ${before}`}.`;
}

function range({ fromId, toId }: { fromId: string; toId: string }): string {
  return fromId === toId ? fromId : `${fromId} to ${toId}`;
}

function blocks(all: readonly IntervalBlock[]): string {
  return all
    .map(({ fromPosition, intervalSeconds }) =>
      fromPosition === 1
        ? duration(intervalSeconds)
        : `from position ${fromPosition} on ${duration(intervalSeconds)}`,
    )
    .join(', ');
}

function duration(seconds: number): string {
  const [hours, minutes, rest] = [
    Math.floor(seconds / 3600),
    Math.floor((seconds % 3600) / 60),
    seconds % 60,
  ];
  const parts = [
    hours > 0 ? `${hours} h` : '',
    minutes > 0 ? `${minutes} min` : '',
    rest > 0 ? `${rest} s` : '',
  ];
  return parts.filter((part) => part !== '').join(' ') || '0 min';
}
