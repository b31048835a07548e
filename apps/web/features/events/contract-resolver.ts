import { toNestErrors } from '@hookform/resolvers';
import type { FieldErrors, FieldValues, Resolver } from 'react-hook-form';
import type { ZodType } from 'zod';

/** What is wrong with one field of a form, by the name the form gives it. */
export interface PlacedProblem {
  path: string;
  message: string;
}

/** Puts a problem of the contract to the field of the form it comes from, in that field's unit and words. */
export type PlaceProblem<Values> = (problem: PlacedProblem, values: Values) => PlacedProblem;

const AS_IT_IS = (problem: PlacedProblem) => problem;

/** The problems the contract has with a form; `toBody` turns what was typed into what is sent. */
export function findProblems<Values>(
  values: Values,
  toBody: (values: Values) => unknown,
  schema: ZodType,
  place: PlaceProblem<Values> = AS_IT_IS,
): PlacedProblem[] {
  const result = schema.safeParse(toBody(values));
  if (result.success) return [];
  const placed = result.error.issues.map(({ path, message }) =>
    place({ path: path.join('.'), message }, values),
  );
  // The first sentence about a field is the one to mend first.
  return placed.filter(({ path }, index) => placed.findIndex((one) => one.path === path) === index);
}

/**
 * Lets a form of text boxes be held to the contract, which speaks of whole metres and seconds: what was typed stays as
 * it is in the form, and is only turned into the contract's shape to be looked at.
 */
export function contractResolver<Values extends FieldValues>(
  schema: ZodType,
  toBody: (values: Values) => unknown,
  place?: PlaceProblem<Values>,
): Resolver<Values> {
  return (values, _context, options) => {
    const problems = findProblems(values, toBody, schema, place);
    if (problems.length === 0) return { values, errors: {} };
    const flat: FieldErrors = Object.fromEntries(
      problems.map(({ path, message }) => [path, { type: 'contract', message }]),
    );
    return { values: {}, errors: toNestErrors(flat, options) };
  };
}
