import { servicesOf } from '@halfshaft/itinerary';
import {
  type Drive,
  fullStarterCards,
  neededAtService,
  preparedAtHome,
  type Surface,
  starterCards,
  usableMinutes,
} from '@halfshaft/lifing';
import { longEvent } from './long-event';

const SERVICES = 6;
const PEOPLE = 2;
const SETS = { small: starterCards, full: fullStarterCards };
const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];

const itinerary = longEvent(SERVICES);
const services = servicesOf(itinerary);
const allowedSeconds = services[0]?.allowedSeconds ?? 0;
const { personSeconds } = usableMinutes({ allowedSeconds, people: PEOPLE });
console.log(
  `Person-minutes that fall due for a car prepared at home, ${PEOPLE} people, ${allowedSeconds / 60} minutes a service: ${personSeconds / 60} are usable.`,
);

for (const [name, makeCards] of Object.entries(SETS)) {
  for (const drive of DRIVES) {
    for (const surface of SURFACES) {
      const cards = makeCards(drive, surface);
      const known = { itinerary, services, runs: new Map(), plannedConditions: new Map(), position: 1 };
      const needed = services.map((_, serviceIndex) => {
        const question = { ...known, serviceIndex, cards, lastDone: preparedAtHome(cards) };
        const { doNowPersonSeconds, ifTimePersonSeconds } = neededAtService(question);
        return (doNowPersonSeconds + ifTimePersonSeconds) / 60;
      });
      const set = `${name} set (${cards.length} cards), ${drive} drive on ${surface}`;
      console.log(`  ${set}: ${needed.join(', ')}`);
    }
  }
}
