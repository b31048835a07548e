import type { Service, ServiceTask } from '../service-model';

/** One thing that a service asks for and could do without. */
export interface Reason {
  kind:
    | 'mustBeDone'
    | 'latest'
    | 'people'
    | 'skill'
    | 'hours'
    | 'tool'
    | 'room'
    | 'waits'
    | 'pin'
    | 'notBefore'
    | 'cold'
    | 'fuelOpen'
    | 'open'
    | 'closed';
  /** The task, car, person … it is about. */
  id: string;
  sentence: string;
  /** The same service without it: every plan is still a plan, and there may be others. */
  drop: (service: Service) => Service;
}

/** Changes one task. */
export function withTask(id: string, change: (task: ServiceTask) => ServiceTask): Reason['drop'] {
  return (service) => ({
    ...service,
    tasks: service.tasks.map((task) => (task.id === id ? change(task) : task)),
  });
}
