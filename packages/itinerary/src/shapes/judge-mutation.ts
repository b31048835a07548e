import type { Itinerary, ItineraryProblem } from '../model';
import { readItinerary } from '../reading/read-itinerary';
import type { ItineraryRead, ReadTable } from '../reading/read-itinerary-model';
import { type Mutation, mutation } from './mutations';

export type MutationOutcome = 'sameModel' | 'otherModel' | 'newProblem';

export interface JudgedMutation {
  mutation: Mutation;
  outcome: MutationOutcome;
  /** A sentence where the outcome is one that must not be; null where all is well. */
  failure: string | null;
}

/**
 * Reads a mutated itinerary and judges what came of it, against the untouched one:
 *
 * - whatever the mutation, the answer is an itinerary or problems that stop it, each a sentence with a code;
 * - an itinerary that differs comes with a table that differs: what changed can be seen;
 * - a figure of another value gives another itinerary or a problem that was not there, never the same itinerary;
 * - a change of layout gives the same itinerary, or a problem that was not there;
 * - a control or stage lost or doubled gives another itinerary or a problem that was not there.
 */
export function judgeMutation(seed: number): JudgedMutation {
  const mutated = mutation(seed);
  const base = readItinerary(mutated.shape.text, mutated.shape.options);
  const read = readItinerary(mutated.text, mutated.shape.options);
  const outcome = outcomeOf(base, read);
  return { mutation: mutated, outcome, failure: failureOf(mutated, outcome, base, read) };
}

function outcomeOf(base: ItineraryRead, read: ItineraryRead): MutationOutcome {
  if (hasNewProblem(problemsOf(base), problemsOf(read))) return 'newProblem';
  return isEqual(itineraryOf(base), itineraryOf(read)) ? 'sameModel' : 'otherModel';
}

function failureOf(
  mutated: Mutation,
  outcome: MutationOutcome,
  base: ItineraryRead,
  read: ItineraryRead,
): string | null {
  const { parsed } = read;
  if (!parsed.ok && !parsed.problems.some((problem) => problem.severity === 'error'))
    return 'refused without an error';
  if (parsed.ok && parsed.warnings.some((problem) => problem.severity === 'error'))
    return 'read in spite of an error';
  if (!problemsOf(read).every(isSentence)) return 'a problem is no sentence with a code';
  if (outcome === 'otherModel' && isEqual(textsOf(base.table), textsOf(read.table)))
    return 'another itinerary from the same cells';
  if (mutated.kind === 'figure' && mutated.isOtherValue && outcome === 'sameModel')
    return 'a figure was lost';
  if (mutated.kind === 'layout' && outcome === 'otherModel') return 'the layout changed the itinerary';
  if (mutated.kind === 'row' && mutated.isPointRow && outcome === 'sameModel') return 'a row was lost';
  return null;
}

function isSentence({ message, code }: ItineraryProblem): boolean {
  return /^\P{Ll}.*\.$/su.test(message) && code !== '';
}

function hasNewProblem(before: readonly ItineraryProblem[], after: readonly ItineraryProblem[]): boolean {
  const left = before.map((problem) => problem.code);
  return after.some(({ code }) => {
    const at = left.indexOf(code);
    if (at !== -1) left.splice(at, 1);
    return at === -1;
  });
}

function problemsOf({ parsed }: ItineraryRead): ItineraryProblem[] {
  return parsed.ok ? parsed.warnings : parsed.problems;
}

function itineraryOf({ parsed }: ItineraryRead): Itinerary | null {
  return parsed.ok ? parsed.itinerary : null;
}

function textsOf(table: ReadTable | null): unknown {
  return (
    table && [
      table.headings.map((heading) => [heading.text, heading.meaning, heading.unit]),
      table.rows.map((row) => row.cells.map((cell) => cell.text)),
    ]
  );
}

function isEqual(one: unknown, other: unknown): boolean {
  return JSON.stringify(one) === JSON.stringify(other);
}
