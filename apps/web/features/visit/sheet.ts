import type { Visit } from '@halfshaft/contract';
import {
  dueAt,
  type EpochSeconds,
  formatClock,
  formatDay,
  type Itinerary,
  positionIn,
  positionsOf,
  type ServiceId,
  type ServiceWindow,
  servicesOf,
} from '@halfshaft/itinerary';
import {
  type CardVerdict,
  doneOnTheWay,
  type JobCard,
  judgeService,
  type LastDone,
  neededPersonSeconds,
  preparedAtHome,
  type ReasonNames,
  reasonInWords,
  starterCards,
  type UsableTime,
  usableMinutes,
} from '@halfshaft/lifing';
import { type Share, shareOut } from './share-out';

export interface SheetTask {
  card: JobCard;
  /** Why now; empty where it is simply due each time. */
  reason: string;
  seconds: number;
  people: number;
  mustDo: boolean;
}

export interface ServiceSheet {
  service: ServiceWindow;
  /** Of the car in the section of the service. */
  startPosition: number;
  /** Due in and due out of the car's own start position. */
  inAt: EpochSeconds;
  outAt: EpochSeconds;
  usable: UsableTime;
  neededSeconds: number;
  ifTimeSeconds: number;
  /** One for each person. */
  shares: Share<SheetTask>[];
  canWait: { name: string; reason: string; overdue: boolean }[];
}

const NOTHING_DRIVEN = { runs: new Map(), plannedConditions: new Map() };

interface SheetQuestion {
  visit: Pick<Visit, 'drive' | 'surface' | 'people' | 'startPosition' | 'positionsBySection'>;
  itinerary: Itinerary;
  serviceIndex: number;
}

/** Where the car of a visitor starts, also after a regroup. */
export function positionsOfVisit(visit: Pick<Visit, 'startPosition' | 'positionsBySection'>) {
  const { startPosition, positionsBySection = {} } = visit;
  return positionsOf({ startPosition, positionsBySection });
}

/** "Service B", "Remote service C". */
export function serviceName(service: Pick<ServiceWindow, 'id' | 'kind'>): string {
  return `${service.kind === 'service' ? 'Service' : 'Remote service'} ${service.id}`;
}

/**
 * What a car with the starter cards needs at one service, shared out among the people. Null when there is no such
 * service. Nothing is known yet of what was done or driven: the car is taken as prepared at home, and what fell due at
 * an earlier service as done there.
 */
export function makeSheet({ visit, itinerary, serviceIndex }: SheetQuestion): ServiceSheet | null {
  const services = servicesOf(itinerary);
  const service = services[serviceIndex];
  if (!service) return null;
  const position = positionsOfVisit(visit);
  const cards = starterCards(visit.drive, visit.surface);
  const asked = { itinerary, services, serviceIndex, position, cards, ...NOTHING_DRIVEN };
  // At a service before the first stage the work before the start is what is done there.
  const beforeStart: ReadonlyMap<string, LastDone> =
    service.inIndex === 0 ? new Map() : preparedAtHome(cards);
  const verdicts = judgeService({ ...asked, lastDone: doneOnTheWay({ ...asked, lastDone: beforeStart }) });
  const inAt = dueAt(itinerary, service.inIndex, position);
  const names = reasonNames(itinerary.timeZone, services, inAt);
  const byId = new Map(cards.map((card) => [card.id, card]));
  const judged = verdicts.flatMap((verdict) => {
    const card = byId.get(verdict.cardId);
    return card ? [{ card, verdict, reason: sentenceOf(verdict, names) }] : [];
  });
  const work = judged
    .filter(({ verdict }) => verdict.verdict !== 'leave')
    .map(({ card, verdict, reason }) => toTask(card, verdict, reason))
    .sort((one, other) => Number(other.mustDo) - Number(one.mustDo) || closing(one) - closing(other));
  return {
    service,
    startPosition: positionIn(position, service.section),
    inAt,
    outAt: dueAt(itinerary, service.outIndex, position),
    usable: usableMinutes({ allowedSeconds: service.allowedSeconds, people: visit.people }),
    neededSeconds: neededPersonSeconds(work.filter((task) => task.mustDo)),
    ifTimeSeconds: neededPersonSeconds(work.filter((task) => !task.mustDo)),
    shares: shareOut(work, visit.people),
    canWait: judged
      .filter(({ verdict }) => verdict.verdict === 'leave')
      .map(({ card, verdict, reason }) => ({ name: card.name, reason, overdue: verdict.overdue })),
  };
}

function toTask(card: JobCard, verdict: CardVerdict, reason: string): SheetTask {
  const { seconds, people } = card;
  return { card, reason, seconds, people, mustDo: verdict.verdict === 'doNow' };
}

/**
 * Work that closes a service stands last: what is checked and signed, then what concerns the whole car (common
 * practice, no source).
 */
function closing({ card }: SheetTask): number {
  if (card.place === 'wholeCar') return 2;
  return card.needsSignature ? 1 : 0;
}

function sentenceOf({ reasons }: CardVerdict, names: ReasonNames): string {
  const [first] = reasons;
  if (!first) return '';
  // "every service" beside most lines of a sheet would hide the reasons that matter.
  const isEachTime = first.code === 'past' && first.limit === 1;
  return isEachTime ? '' : reasonInWords(first, names);
}

function reasonNames(timeZone: string, services: readonly ServiceWindow[], today: EpochSeconds): ReasonNames {
  const day = formatDay(today, timeZone);
  return {
    clock: (at) => {
      const clock = formatClock(at, timeZone);
      return formatDay(at, timeZone) === day ? clock : `${clock} on ${formatDay(at, timeZone)}`;
    },
    serviceName: (id: ServiceId) => {
      const service = services.find((each) => each.id === id);
      return service ? serviceName(service) : `Service ${id}`;
    },
  };
}
