import type { PlacedProblem } from './contract-resolver';
import { readNumber } from './read-number';

/** Positions as typed, by `s2`, `s3`: a form library would take bare figures for places in a list. */
export type PositionForm = Record<string, string>;

export const positionField = (section: number) => `s${section}`;

/** The form for these sections; nothing typed where the car carries on its position. */
export function toPositionForm(
  sections: readonly number[],
  positionsBySection: Record<string, number>,
): PositionForm {
  return Object.fromEntries(
    sections.map((section) => [positionField(section), String(positionsBySection[section] ?? '')]),
  );
}

/** What is sent: an empty box leaves the section out. */
export function formToPositions(form: PositionForm): Record<string, number> {
  return Object.fromEntries(
    Object.entries(form)
      .filter(([, text]) => text.trim() !== '')
      .map(([field, text]) => [field.slice(1), readNumber(text)]),
  );
}

/** The contract speaks of section 3, the form of its box for it. */
export function placePositionProblem({ path, message }: PlacedProblem): PlacedProblem {
  return { path: path.replace(/^positionsBySection\.(\d+)$/, 'laterPositions.s$1'), message };
}
