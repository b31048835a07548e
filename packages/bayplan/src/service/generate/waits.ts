import type { CompiledService } from '../compile-service';

/** `to` starts at least `lag` after the finish of `from`, when both are done. */
export interface Wait {
  from: number;
  to: number;
  lag: number;
  /** Only when task `chooser` has chosen to come before (0) or after (1) the time in which something is open. */
  chooser: number;
  side: 0 | 1;
  /** Only when this task is done too (it opens what the chooser needs closed), or −1. */
  onlyWith: number;
}

/** What waits for what: links, opening before use before closing, and work on closed things on one side of all that. */
export function waitsOf({ service, links, tasks }: CompiledService): Wait[] {
  const always = { chooser: -1, side: 0 as const, onlyWith: -1 };
  const waits: Wait[] = links.map(({ before, after, lag }) => ({ from: before, to: after, lag, ...always }));
  for (const { id, opening, closing } of service.accesses) {
    const opener = tasks.findIndex((task) => task.id === opening);
    const closer = tasks.findIndex((task) => task.id === closing);
    if (opener >= 0 && closer >= 0) waits.push({ from: opener, to: closer, lag: 0, ...always });
    for (const { number } of tasks) {
      const { open, closed } = service.tasks[number] ?? {};
      if (open?.includes(id) && opener >= 0) waits.push({ from: opener, to: number, lag: 0, ...always });
      if (open?.includes(id) && closer >= 0) waits.push({ from: number, to: closer, lag: 0, ...always });
      if (!closed?.includes(id)) continue;
      const choice = { lag: 0, chooser: number, onlyWith: opener };
      // With one way only, the choice is made: both sides mean the same.
      for (const side of [0, 1] as const) {
        const before = opener >= 0 && (side === 0 || closer < 0);
        if (before) waits.push({ from: number, to: opener, side, ...choice });
        else if (closer >= 0) waits.push({ from: closer, to: number, side, ...choice });
      }
    }
  }
  return waits;
}

/** What needs closed that is open already and is never closed: neither side is left for it, so that no plan can do it. */
export function sidelessOf({ service }: CompiledService): number[] {
  const neverClosed = service.accesses.filter(
    ({ opening, closing }) => opening === undefined && closing === undefined,
  );
  return [...service.tasks.keys()].filter((task) =>
    neverClosed.some(({ id }) => service.tasks[task]?.closed?.includes(id)),
  );
}
