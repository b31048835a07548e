import * as fc from 'fast-check';
import { frozen } from '../fixtures';
import type { FieldStretch } from './field-stretch';

/** Used by tests only. */
export const CAUSES = ['mechanical', 'off', 'time'];
export const stretch = (to: number, cause: string | null = null, from = 0, unsure = false): FieldStretch => ({
  from,
  to,
  cause,
  unsure,
});
/** Five starters of an event of 80 km: one finished, one withdrew, one came back after its gearbox and finished. */
export const FIELD = frozen([
  stretch(80),
  stretch(50),
  stretch(20, 'mechanical', 0, true),
  stretch(80, null, 40),
  stretch(20, 'off'),
  stretch(60, 'mechanical'),
]);

export const anyField = fc
  .array(
    fc.record({
      from: fc.constantFrom(0, 0, 0, 40),
      run: fc.integer({ min: 0, max: 60 }),
      cause: fc.constantFrom(null, ...CAUSES),
      unsure: fc.boolean(),
    }),
    { maxLength: 60 },
  )
  .map((rows) => rows.map(({ from, run, cause, unsure }) => stretch(from + run, cause, from, unsure)));
