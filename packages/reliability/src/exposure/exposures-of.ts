import type { CarHistory, PartQuestion } from './car-history';
import type { Exposure } from './exposure';
import { historiesByCard } from './histories-by-card';
import { watchCar } from './watch-car';

/**
 * How far each part of each car was watched, and how that ended: in a failure, or with the part still good and a reason
 * why nothing more is known of it. The rules are in rules.md; a life is what `observationsOf` makes of it.
 *
 * @returns car by car and question by question; of one place in the order in which they were driven
 * @throws RangeError when an event does not count what a question asks for, an amount falls, a record lies at no point,
 * or a car is driven on while it is out
 * @example
 * exposuresOf([car], [{ cardId: 'pads', positions: ['FL', 'FR'], counter: 'stageMetres', doneRenews: true, shows: 'whenLooked' }])
 * // [{ carId: '12', position: 'FL', entryAge: 0, from: 0, to: 41200, ending: 'replaced', … }, …]
 */
export function exposuresOf(cars: readonly CarHistory[], questions: readonly PartQuestion[]): Exposure[] {
  return cars.flatMap((car) => {
    const historyOf = historiesByCard(car);
    return questions.flatMap((question) => {
      const { exposures, places } = watchCar(historyOf(question.cardId), question);
      return [...places.keys()].flatMap((place) => exposures.filter(({ position }) => position === place));
    });
  });
}
