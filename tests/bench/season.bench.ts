import { servicesOf } from '@halfshaft/itinerary';
import { exposuresOf, failuresOf, historiesByCard, observationsOf } from '@halfshaft/reliability';
import {
  type CarLog,
  carLivesOf,
  failedPartsOf,
  type LifeQuestion,
  type LoggedEvent,
} from '@halfshaft/worklog';
import { longEvent } from './long-event';
import { medianOf, ROUNDS } from './median-of';

const CARS = 200;
const EVENTS = 12;
const SERVICES = 6;
/** Of the cards of a car, those of which something failed once: only they are asked about. */
const PARTS = 30;
const MEGABYTE = 1024 ** 2;
const MICROS_IN_MILLI = 1000;

const itinerary = longEvent(SERVICES);
const services = servicesOf(itinerary);
const stageIds = itinerary.points.flatMap((point) => (point.kind === 'stage' ? [point.id] : []));

/** Every part is looked at in every service, and fails in one of every 40 looks; a tenth of the failures gets a new part. */
function logOf(car: number, events: number, parts: number): CarLog {
  const logged = Array.from({ length: events }, (_, event): LoggedEvent => {
    const isFailing = (part: number, service: number) =>
      (car * 7 + event * 11 + part * 13 + service * 17) % 40 === 0;
    const done = services.flatMap(({ id: serviceId }, service) =>
      Array.from({ length: parts }, (_, part) => ({
        ...{ serviceId, cardId: `card ${part}` },
        findings: isFailing(part, service)
          ? [{ grade: 'needsWork' as const, position: null, lookId: null, words: '' }]
          : [],
      })),
    );
    const facts = Array.from({ length: parts / 10 }, (_, index) => ({
      ...{ factId: `f${index}`, entryId: `e${event}`, withdrawn: false, recordedBy: 'mia', changedBy: 'mia' },
      at: { kind: 'service' as const, serviceId: services[index % services.length]?.id ?? '' },
      fact: {
        kind: 'fitted' as const,
        cardId: `card ${10 * index}`,
        position: null,
        words: '',
        because: 'wornOut' as const,
      },
      changedSeq: index + 1,
    }));
    return {
      ...{ eventId: `event ${event}`, itinerary, isOver: true, times: [], done, facts },
      stages: stageIds.map((stageId) => ({ stageId, driven: true })),
      workedAt: services.map(({ id }) => id),
    };
  });
  return { carId: `car ${car}`, events: logged, carried: {} };
}

/** What the API works out of one car, from what the log has to lives. */
function outlinesOf(log: CarLog): { failures: number; observations: number } {
  const questions = failedPartsOf(log.events).map(
    ({ cardId }): LifeQuestion => ({
      ...{ cardId, positions: [], counter: 'stageMetres', doneRenews: false, shows: 'whenLooked' },
    }),
  );
  const historyOf = historiesByCard(carLivesOf(log, questions));
  return {
    failures: questions.reduce(
      (sum, question) => sum + failuresOf(historyOf(question.cardId), question).length,
      0,
    ),
    observations: questions.reduce((sum, question) => {
      const exposures = exposuresOf([historyOf(question.cardId)], [question]);
      return sum + observationsOf(exposures).observations.length;
    }, 0),
  };
}

interface Season {
  millis: number;
  megabytes: number;
  failures: number;
  observations: number;
}

function measure(cars: number, events: number, parts: number): Season {
  const logs = Array.from({ length: cars }, (_, car) => logOf(car, events, parts));
  let [failures, observations, most] = [0, 0, 0];
  const rounds = Array.from({ length: ROUNDS }, () => {
    const before = process.memoryUsage().heapUsed;
    const startedAt = process.cpuUsage();
    const outlines = logs.map(outlinesOf);
    const { user, system } = process.cpuUsage(startedAt);
    const millis = (user + system) / MICROS_IN_MILLI;
    most = Math.max(most, process.memoryUsage().heapUsed - before);
    failures = outlines.reduce((sum, each) => sum + each.failures, 0);
    observations = outlines.reduce((sum, each) => sum + each.observations, 0);
    return millis;
  });
  return { millis: medianOf(rounds), megabytes: most / MEGABYTE, failures, observations };
}

const CASES = [
  ['the season', CARS, EVENTS, PARTS],
  ['a tenth of the cars', CARS / 10, EVENTS, PARTS],
  ['a tenth of the cars, twice the events', CARS / 10, 2 * EVENTS, PARTS],
  ['a tenth of the cars, twice the parts', CARS / 10, EVENTS, 2 * PARTS],
] as const;

measure(5, EVENTS, PARTS);
console.log(
  `Lives of all parts that failed, from the log of a season, in time of the processor; median of ${ROUNDS} rounds.`,
);
for (const [name, cars, events, parts] of CASES) {
  const { millis, megabytes, failures, observations } = measure(cars, events, parts);
  console.log(
    `  ${name}: ${cars} cars × ${events} events × ${parts} parts, ${failures} failures and ${observations} lives in ${millis.toFixed(0)} ms: ${((1000 * millis) / (cars * events * parts)).toFixed(1)} µs for each part of a car at an event; at most ${megabytes.toFixed(0)} MB more`,
  );
}
