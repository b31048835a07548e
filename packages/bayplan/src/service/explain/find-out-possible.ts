import { compileService } from '../compile-service';
import { proveBest, type ServiceIncumbent } from '../exact/prove-best';
import type { Service } from '../service-model';

export type Possible = 'yes' | 'no' | 'unknown';

/** Whether the service has any plan, found out within so many schedules. */
export function findOutPossible(service: Service, maxSchedules: number): Possible {
  const incumbent: ServiceIncumbent = { best: undefined, bound: {} };
  let schedules = 0;
  for (const descent of proveBest(compileService(service), incumbent)) {
    if (incumbent.best) return 'yes';
    if (descent === 'closed') return 'no';
    schedules += 1;
    if (schedules >= maxSchedules) break;
  }
  return 'unknown';
}
