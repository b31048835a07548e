import type { ServiceWindow } from '@halfshaft/itinerary';
import { judgeService } from './judge-service';
import type { CardsQuestion } from './questions';

/** One version of the itinerary as this car meets it. `lastDone` and `runs` are those of the version's own points. */
export interface JobsOfVersion extends Omit<CardsQuestion, 'serviceIndex'> {
  /** The first service not past yet; those before it are left out. */
  fromServiceIndex: number;
}

/** A card that comes due elsewhere than it did. Null: at no service that is still to come. */
export interface JobChange {
  cardId: string;
  before: ServiceWindow | null;
  after: ServiceWindow | null;
}

/**
 * Which jobs another version of the itinerary makes due at another service: for each card the first service that says
 * do now, in each version, as long as nothing more is done. Services are the same where their in-control is, whatever
 * letter they have. Cards in the order of `after`; those that only one version has are left out.
 *
 * @throws RangeError as `judgeCard` does
 * @example
 * jobsChanged(before, after) // [{ cardId: 'pads', before: serviceC, after: serviceB }]
 */
export function jobsChanged(before: JobsOfVersion, after: JobsOfVersion): JobChange[] {
  const [was, is] = [firstDue(before), firstDue(after)];
  const known = new Set(before.cards.map(({ id }) => id));
  return after.cards.flatMap(({ id }) => {
    const change = { cardId: id, before: was.get(id) ?? null, after: is.get(id) ?? null };
    const isSame = change.before?.inControl === change.after?.inControl;
    return isSame || !known.has(id) ? [] : [change];
  });
}

function firstDue({ fromServiceIndex, ...question }: JobsOfVersion): Map<string, ServiceWindow> {
  const due = new Map<string, ServiceWindow>();
  question.services.forEach((service, serviceIndex) => {
    if (serviceIndex < fromServiceIndex) return;
    for (const { cardId, verdict } of judgeService({ ...question, serviceIndex })) {
      if (verdict === 'doNow' && !due.has(cardId)) due.set(cardId, service);
    }
  });
  return due;
}

/**
 * The change as one sentence.
 *
 * @example
 * jobChangeInWords(change, 'Brake pads') // 'Brake pads: due at Service B instead of Service C.'
 */
export function jobChangeInWords({ before, after }: JobChange, cardName: string): string {
  if (after === null) return `${cardName}: no longer due${before ? ` at ${titleOf(before)}` : ''}.`;
  if (before === null) return `${cardName}: now due at ${titleOf(after)}.`;
  return `${cardName}: due at ${titleOf(after)} instead of ${titleOf(before)}.`;
}

function titleOf({ kind, id }: ServiceWindow): string {
  return `${kind === 'service' ? 'Service' : 'Remote service'} ${id}`;
}
