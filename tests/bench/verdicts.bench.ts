import { servicesOf } from '@halfshaft/itinerary';
import { type CardVerdict, judgeService, type LastDone, starterCards } from '@halfshaft/lifing';
import { longEvent } from './long-event';
import { medianOf, ROUNDS } from './median-of';

const CARS = 200;
const CARDS = 60;
const SERVICES = 15;

const itinerary = longEvent(SERVICES);
const services = servicesOf(itinerary);
const starters = starterCards('four', 'gravel');
const cards = Array.from({ length: CARDS }, (_, index) => {
  const card = starters[index % starters.length];
  if (!card) throw new Error('There are no starter cards.');
  return { ...card, id: `card ${index}` };
});
const stageIds = itinerary.points.filter((point) => point.kind === 'stage').map((point) => point.id);
const runs = new Map(
  stageIds.map((stageId, index) => [
    stageId,
    { stageId, driven: index % 9 !== 8, conditions: { dust: 300 } },
  ]),
);

/** A card was last done at one of the services before, or before the event with some wear to carry. */
function lastDoneFor(car: number, serviceIndex: number): Map<string, LastDone> {
  return new Map(
    cards.map((card, index): [string, LastDone] => {
      const visit = services[(car + index) % SERVICES];
      if (visit && (car + index) % SERVICES < serviceIndex) {
        return [card.id, { pointIndex: visit.inIndex, carried: null }];
      }
      return [
        card.id,
        { pointIndex: null, carried: { stageMetres: 1_000 * (index % 30), stages: index % 5 } },
      ];
    }),
  );
}

function judgeAll(carCount: number): { verdicts: number; doNow: number } {
  let verdicts = 0;
  let doNow = 0;
  for (let car = 1; car <= carCount; car += 1) {
    for (let serviceIndex = 0; serviceIndex < SERVICES; serviceIndex += 1) {
      const question = {
        itinerary,
        services,
        runs,
        plannedConditions: new Map(),
        serviceIndex,
        position: car,
      };
      const judged = judgeService({ ...question, cards, lastDone: lastDoneFor(car, serviceIndex) });
      verdicts += judged.length;
      doNow += judged.filter((each) => each.verdict === 'doNow').length;
    }
  }
  return { verdicts, doNow };
}

/** The same loops and the same last-done maps, with one empty verdict made for each card. */
function loopOnly(carCount: number): { verdicts: number; doNow: number } {
  let verdicts = 0;
  let doNow = 0;
  for (let car = 1; car <= carCount; car += 1) {
    for (let serviceIndex = 0; serviceIndex < SERVICES; serviceIndex += 1) {
      const lastDone = lastDoneFor(car, serviceIndex);
      const judged = cards.map(
        (card): CardVerdict => ({
          ...{ cardId: card.id, verdict: lastDone.has(card.id) ? 'leave' : 'doNow' },
          ...{ doableHere: true, overdue: false, reasons: [] },
        }),
      );
      verdicts += judged.length;
      doNow += judged.filter((each) => each.verdict === 'doNow').length;
    }
  }
  return { verdicts, doNow };
}

/** Of code that has run before, so that it is compiled and warm. */
function millisecondsOf(work: () => unknown): number {
  return medianOf(
    Array.from({ length: ROUNDS }, () => {
      const startedAt = performance.now();
      work();
      return performance.now() - startedAt;
    }),
  );
}

const { verdicts, doNow } = judgeAll(CARS);
if (services.length !== SERVICES || verdicts !== CARS * CARDS * SERVICES)
  throw new Error('Not all was judged.');
loopOnly(CARS);
const full = millisecondsOf(() => judgeAll(CARS));
const tenth = millisecondsOf(() => judgeAll(CARS / 10));
const loop = millisecondsOf(() => loopOnly(CARS));
console.log(
  `Verdicts of ${CARS} cars × ${CARDS} cards × ${SERVICES} services, ${stageIds.length} stages; median of ${ROUNDS} rounds.`,
);
console.log(
  `  ${verdicts} verdicts (${doNow} do now) in ${full.toFixed(0)} ms: ${((1000 * full) / verdicts).toFixed(1)} µs each`,
);
console.log(
  `  beside the same loops with an empty verdict (${loop.toFixed(0)} ms): ${(full / loop).toFixed(1)} times`,
);
console.log(
  `  beside a tenth of the cars (${tenth.toFixed(0)} ms): ${(full / tenth).toFixed(2)} times the time for 10 times the work`,
);
