import type { LevelOption, Refusal } from '../model';
import { distanceDriven, type FieldStretch } from './field-stretch';
import { type GrowthOverEvents, growthOverEvents } from './growth-over-events';
import { type StopRate, type StopRates, stopRates } from './stop-rates';
import { type StopsAlong, stopsAlong } from './stops-along';

export type FieldGrowth = GrowthOverEvents | Refusal<'tooFewEvents' | 'tooFewFailures'>;

/** What an organiser's own events tell of what stops cars. */
export interface FieldFigures {
  rates: StopRates;
  /** All causes together, event by event. */
  perEvent: StopRate[];
  /** Null while no car has started. */
  along: StopsAlong | null;
  growth: { all: FieldGrowth; causes: { cause: string; growth: FieldGrowth }[] };
}

/**
 * How often each cause stops a car, how far along the stages, and whether that changes from event to event.
 *
 * @param events in the order they were held, each with the stretches of all its cars
 * @param causes in the order of the answer; every cause of the stretches must be among them
 * @throws RangeError as `stopRates` does
 * @example
 * fieldFigures([[{ from: 0, to: 800, cause: 'off', unsure: false }]], ['off']).rates.all.stops // 1
 */
export function fieldFigures(
  events: readonly (readonly FieldStretch[])[],
  causes: readonly string[],
  options: LevelOption = {},
): FieldFigures {
  const stretches = events.flat();
  const along = stopsAlong(stretches, causes, options);
  const growthOf = (isMeant: (cause: string | null) => boolean) =>
    growthOverEvents(
      events.map((event) => ({
        distance: distanceDriven(event),
        failures: event.filter(({ cause }) => isMeant(cause)).length,
      })),
      options,
    );
  return {
    rates: stopRates(stretches, causes, options),
    perEvent: events.map((event) => stopRates(event, causes, options).all),
    along: along.ok ? along : null,
    growth: {
      all: growthOf((cause) => cause !== null),
      causes: causes.map((cause) => ({ cause, growth: growthOf((one) => one === cause) })),
    },
  };
}
