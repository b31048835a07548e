import type { Problem } from '@halfshaft/contract';
import type { FieldValues, Path, UseFormReturn } from 'react-hook-form';
import type { PlaceProblem } from './contract-resolver';

/** Puts what the server says of single fields to those fields of the form. */
export function setFieldProblems<Values extends FieldValues>(
  form: UseFormReturn<Values>,
  problem: Problem,
  place: PlaceProblem<Values> = (one) => one,
): void {
  for (const field of problem.fields) {
    const { path, message } = place(field, form.getValues());
    form.setError(path as Path<Values>, { type: 'server', message });
  }
}
