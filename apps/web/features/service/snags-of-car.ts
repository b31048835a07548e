import type { EntryId, Snag, Task, WorkState } from '@halfshaft/worklog';
import { taskOf } from '@halfshaft/worklog';

export interface CarSnag {
  snag: Snag;
  /** Its repair at this service. */
  task: Task;
}

/** Snags of a car that are still open, the worst first, and those settled at this very service. */
export function snagsOfCar(state: WorkState, entryId: EntryId, serviceId: string): CarSnag[] {
  const settled = settledSnags(state);
  const snags = [...state.snags.values()].filter((snag) => snag.entryId === entryId && !snag.withdrawn);
  return snags
    .filter((snag) => (settled.get(snag.id) ?? serviceId) === serviceId)
    .sort((one, other) => gravity(other) - gravity(one))
    .map((snag) => {
      const ref = { entryId, serviceId, source: { kind: 'snag', snagId: snag.id } } as const;
      return { snag, task: taskOf(state, ref, null) };
    });
}

function gravity({ urgent, stop }: Snag): number {
  return Number(urgent) + Number(stop ?? false);
}

/** Snags that were repaired or called not needed, with the service where. Carried over is still open. */
export function settledSnags(state: WorkState): Map<string, string> {
  const settled = new Map<string, string>();
  for (const { ref, state: now } of state.tasks.values()) {
    if (ref.source.kind !== 'snag') continue;
    if (now === 'done' || now === 'notNeeded') settled.set(ref.source.snagId, ref.serviceId);
  }
  return settled;
}
