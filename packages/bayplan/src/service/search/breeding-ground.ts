import type { CompiledService } from '../compile-service';
import { forcedSides } from '../generate/forced-sides';
import { stagesOf } from './stages-of';

/** A service with what every child of the breeding goes by. */
export interface BreedingGround {
  service: CompiledService;
  /** See {@link stagesOf}. */
  stages: Uint8Array;
  /** See {@link forcedSides}. */
  forced: Uint8Array;
  /** Task by task: how much of people's time a unit of value takes in the best of its ways. */
  costs: Float64Array;
}

export function breedingGroundOf(service: CompiledService): BreedingGround {
  const costs = service.tasks.map(({ ways }) =>
    ways.map(({ duration, heads, value }) => (duration * Math.max(1, heads)) / Math.max(1, value)),
  );
  return {
    service,
    stages: stagesOf(service),
    forced: forcedSides(service),
    costs: Float64Array.from(costs, (ways) => Math.min(...ways)),
  };
}
