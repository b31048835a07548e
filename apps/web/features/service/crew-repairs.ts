import type { EventReplica } from '@halfshaft/contract';
import { repairsOf, type TaskId, type WorkState } from '@halfshaft/worklog';
import { entryNamesOf } from '../work/names';
import type { Visit } from './visit';

export interface CrewRepair {
  taskId: TaskId;
  /** "Look at the temporary repair: Front corners". */
  title: string;
  /** "made at Service A: FL wire round the hanger". */
  why: string;
}

/**
 * Temporary repairs the car leaves this service with: the crew looks at each of them at the first halt, whatever job they
 * belong to. Those made later on, or made good, are left out.
 *
 * @example
 * crewRepairsAfter(replica, state, visit)[0]?.title // 'Look at the temporary repair: Front corners'
 */
export function crewRepairsAfter(
  replica: EventReplica,
  state: WorkState,
  { entry, services, serviceIndex }: Visit,
): CrewRepair[] {
  const later = new Set(services.slice(serviceIndex + 1).map(({ id }) => id));
  const names = entryNamesOf(replica, state);
  return repairsOf(state, entry.entryId)
    .filter(({ task }) => !later.has(task.ref.serviceId))
    .map(({ task, words }) => ({
      taskId: task.id,
      title: `Look at the temporary repair: ${names.task(task.ref)}`,
      why: [`made at ${names.service(task.ref.serviceId)}`, words].filter(Boolean).join(': '),
    }));
}
