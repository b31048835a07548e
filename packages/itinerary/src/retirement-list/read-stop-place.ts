import { excerpt } from '../excerpt';
import type { Itinerary } from '../model';
import { pointNamed } from '../pasted-list/point-named';
import type { StopPlace } from './model';

const RELATIONS: Readonly<Record<string, StopPlace['relation']>> = {
  in: 'in',
  on: 'in',
  after: 'after',
  at: 'after',
};

/**
 * Where a car stopped, or a sentence that says why the cell cannot be read. A stage by its name alone is asked back: it
 * is used for “in it” as often as for “after it”, which is a whole stage of difference.
 *
 * @example
 * readStopPlace('in SS5', itinerary) // { relation: 'in', pointId: 'SS5' }
 */
export function readStopPlace(cell: string, { points }: Itinerary): StopPlace | string {
  const [, word = '', name = ''] = /^(?:(in|on|at|after)\s+)?(.*)$/i.exec(cell) ?? [];
  const point = pointNamed({ points }, name);
  if (!point)
    return `“${excerpt(name || cell)}” is no stage or control of the itinerary. Write it as it is printed there, such as “after ${points[0]?.id ?? 'TC1'}”.`;
  const relation = RELATIONS[word.toLowerCase()];
  if (point.kind === 'control') {
    if (relation !== 'in') return { relation: 'after', pointId: point.id };
    return `${point.id} is a control: write “after ${point.id}” for a car that still reached it.`;
  }
  if (relation === undefined || word.toLowerCase() === 'at')
    return `“${excerpt(cell)}” may mean in the stage or after it. Write “in ${point.id}” or “after ${point.id}”.`;
  return { relation, pointId: point.id };
}
