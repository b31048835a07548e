import { at } from '../../at';
import type { CompiledService } from '../compile-service';

export const EITHER = 255;

/**
 * On which side of the time in which something is open each task that needs it closed must be, or {@link EITHER}: before (0)
 * what needs it open and waits for the task, after (1) what needs it open and the task waits for. A plan with the other side
 * would go round in a circle.
 */
export function forcedSides({ service, links, tasks }: CompiledService): Uint8Array {
  const sides = new Uint8Array(tasks.length).fill(EITHER);
  for (const { number } of tasks) {
    const closed = service.tasks[number]?.closed ?? [];
    const isOpenFor = (other: number) =>
      service.tasks[other]?.open?.some((id) => closed.includes(id)) ?? false;
    if (closed.length === 0) continue;
    if (reach(links, number, 'after').some(isOpenFor)) sides[number] = 0;
    else if (reach(links, number, 'before').some(isOpenFor)) sides[number] = 1;
  }
  return sides;
}

/** Everything before or after a task by links, near or far. */
function reach(links: CompiledService['links'], task: number, way: 'before' | 'after'): number[] {
  const back = way === 'after' ? 'before' : 'after';
  const found = new Set([task]);
  for (const one of found) {
    for (const link of links) if (link[back] === one) found.add(link[way]);
  }
  return [...found].slice(1);
}

/** The side wanted, where there is a choice. */
export function sideFor(forced: Uint8Array, task: number, wanted: number): number {
  const side = at(forced, task);
  return side === EITHER ? wanted : side;
}
