import { CLOSE_UP_SECONDS, PACE_PER_MILLE, SET_UP_SECONDS } from '@halfshaft/lifing';
import type { Place, Service, ServiceLink, ServiceTask } from '../service/service-model';
import type { PlannedCard, VisitQuestion, VisitWork } from './visit-question';

/** The two tasks that no card stands for: up on stands, and wheels on and down. */
export const UP = 'car up';
export const DOWN = 'car down';
const STANDS = 'stands';
const CAR = 'car';

/** A plan may pass the out-time by this much: late and said so is more use than none. */
export const MOST_LATE_SECONDS = 3600;
/** Wide enough for whoever is there to stay until all is done. */
const ALWAYS = 1_000_000;

/** Places worked at with wheels off or from below; common practice, no source. */
const ON_STANDS: readonly PlannedCard['place'][] = [
  'underCar',
  'frontLeft',
  'frontRight',
  'rearLeft',
  'rearRight',
  'allCorners',
];
/** How many find room there; elsewhere nobody is in another's way. Common practice, no source. */
const ROOM: Partial<Record<PlannedCard['place'], number>> = {
  engineBay: 2,
  underCar: 2,
  frontLeft: 2,
  frontRight: 2,
  rearLeft: 2,
  rearRight: 2,
  cockpit: 2,
  boot: 1,
};
/** Of these a van has one; of torches, gauges and spanners enough. Common practice, no source. */
const SINGLE_TOOLS = ['bleed kit', 'car jack', 'piston press', 'plug key', 'torque wrench', 'wheel gun'];

/**
 * The model of one service of one car that a plan is made of. A card takes its own seconds at best, and at worst as much
 * longer as the usual pace has it; who is there can do everything. Work at corners and below needs the car on stands,
 * torqued wheel nuts need it down again, and what concerns the whole car comes last. What is not urgent is worth the more
 * the earlier it stands in the list.
 */
export function serviceOfVisit({ workSeconds, isRemote, people, work }: VisitQuestion): Service {
  const crew = [{ count: Math.min(2, people.length) }];
  const ends = isRemote ? [] : [endOf(UP, SET_UP_SECONDS, crew), endOf(DOWN, CLOSE_UP_SECONDS, crew)];
  return {
    cars: [{ id: CAR, inTime: 0, outTime: workSeconds, latest: workSeconds + MOST_LATE_SECONDS }],
    people: people.map((id) => ({ id, skills: [], hours: [{ from: 0, until: ALWAYS }] })),
    places: placesOf(work),
    tools: SINGLE_TOOLS.map((id) => ({ id, count: 1 })),
    accesses: isRemote ? [] : [{ id: STANDS, car: CAR, opening: UP, closing: DOWN }],
    tasks: [...ends, ...work.map((each, place) => taskOf(each, work, { isRemote, place }))],
  };
}

function endOf(id: string, seconds: number, crew: { count: number }[]): ServiceTask {
  return { id, car: CAR, ways: [{ id, crew, duration: { low: seconds, likely: seconds, high: seconds } }] };
}

/** A card for more people than usually find room somewhere makes that room. */
function placesOf(work: readonly VisitWork[]): Place[] {
  return Object.entries(ROOM).map(([id, room]) => {
    const crews = work.filter(({ card }) => card.place === id).map(({ card }) => card.people);
    return { id, room: Math.max(room, ...crews) };
  });
}

function taskOf(
  { card, mustDo }: VisitWork,
  work: readonly VisitWork[],
  { isRemote, place }: { isRemote: boolean; place: number },
): ServiceTask {
  const { id, seconds, people } = card;
  const least = Math.max(1, seconds);
  const way = {
    id,
    duration: { low: least, likely: least, high: (least * 1000) / PACE_PER_MILLE },
    crew: [{ count: people }],
    ...(ROOM[card.place] === undefined ? {} : { place: card.place }),
    tools: card.tools.filter((tool) => SINGLE_TOOLS.includes(tool)),
    value: mustDo ? 0 : work.length - place,
  };
  return {
    id,
    car: CAR,
    mandatory: mustDo,
    ways: [way],
    after: isLast(card) ? afterAllBut(card, work) : [],
    fuelOpen: card.starterId === 'starter:refuel',
    ...(isRemote ? {} : stateOf(card)),
  };
}

function stateOf(card: PlannedCard): Pick<ServiceTask, 'open' | 'closed' | 'after'> {
  // Torqued on its wheels, when nothing takes them off any more.
  if (card.starterId === 'starter:wheel-nuts') return { closed: [STANDS], after: [{ task: DOWN }] };
  return { open: ON_STANDS.includes(card.place) ? [STANDS] : [] };
}

function isLast({ place }: PlannedCard): boolean {
  return place === 'wholeCar';
}

function afterAllBut(card: PlannedCard, work: readonly VisitWork[]): ServiceLink[] {
  return work
    .filter((one) => one.card.id !== card.id && !isLast(one.card))
    .map((one) => ({ task: one.card.id }));
}
