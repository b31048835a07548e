import { type CompiledService, compileService } from '../compile-service';
import type { ServiceTask } from '../service-model';

/** Takes one moment of one person. */
export function shortTask(id: string, more: Partial<ServiceTask> = {}): ServiceTask {
  const ways = [{ id: 'way', crew: [{ count: 1 }], duration: { low: 1, likely: 1, high: 1 } }];
  return { id, car: 'car', ways, ...more };
}

/** Tasks 0 and 1 put the car on stands and take it off; Ada does it all. */
export function compileOnStands(...tasks: ServiceTask[]): CompiledService {
  return compileService({
    cars: [{ id: 'car', inTime: 0, outTime: 9 }],
    people: [{ id: 'Ada', skills: [], hours: [{ from: 0, until: 9 }] }],
    places: [],
    tools: [],
    accesses: [{ id: 'stands', car: 'car', opening: 'up', closing: 'down' }],
    tasks: [shortTask('up'), shortTask('down'), ...tasks],
  });
}
