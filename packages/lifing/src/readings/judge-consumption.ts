import type { ReadingSpec } from '../job-card';
import { requireWholeNumber } from '../whole-number';
import { figuresOf, valueInWords } from './value-in-words';

export interface Consumption {
  /** In the reading's smallest unit on 100 stage km, cut; null when too little was driven to say. */
  perHundredKilometres: number | null;
  state: 'inOrder' | 'high' | 'tooEarly';
  words: string;
}

/** Topping up to a mark is not exact: over a few km it would look like a great thirst. Common practice, no source. */
const LEAST_STAGE_METRES = 20_000;

/**
 * What was topped up against the stage km driven since the level was last right (oil, coolant): flagged above a limit
 * on 100 stage km. A level as such is no trend; how fast it falls is.
 *
 * @param added what went in, in the reading's smallest unit
 * @param limit the most on 100 stage km, in the same unit
 * @throws RangeError when an amount is negative or not whole
 * @example
 * judgeConsumption({ spec: oilAdded, added: 4, stageMetres: 48_000, limit: 5 })
 * // { perHundredKilometres: 8, state: 'high', words: 'Oil added: 0.8 l on 100 stage km, at most 0.5' }
 */
export function judgeConsumption({
  spec,
  added,
  stageMetres,
  limit,
}: {
  spec: Pick<ReadingSpec, 'name' | 'unit' | 'decimals'>;
  added: number;
  stageMetres: number;
  limit: number;
}): Consumption {
  for (const [name, value] of Object.entries({ added, stageMetres, limit })) {
    requireWholeNumber('judgeConsumption', name, value);
  }
  if (stageMetres < LEAST_STAGE_METRES) {
    return {
      perHundredKilometres: null,
      state: 'tooEarly',
      words: `${spec.name}: ${valueInWords(spec, added)}, too few stage km to judge`,
    };
  }
  const perHundredKilometres = Math.floor((added * 100_000) / stageMetres);
  // Compared by multiplication, so that nothing is rounded before the limit is.
  const state = added * 100_000 > limit * stageMetres ? 'high' : 'inOrder';
  const used = `${spec.name}: ${valueInWords(spec, perHundredKilometres)} on 100 stage km`;
  return {
    perHundredKilometres,
    state,
    words: state === 'high' ? `${used}, at most ${figuresOf(spec, limit)}` : used,
  };
}
