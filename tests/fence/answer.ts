import type { Caller } from '../support/house';

/** What a caller is told, as far as it could tell two callers' worlds apart. */
export type Answer = { ok: true; value: unknown } | { ok: false; code: string; message: string };

/** Calls the procedure `noun.verb` and turns what it throws into an answer. */
export async function ask(caller: Caller, path: string, input: unknown): Promise<Answer> {
  const [noun = '', verb = ''] = path.split('.');
  const procedures = (
    caller as unknown as Record<string, Record<string, (input: unknown) => Promise<unknown>>>
  )[noun];
  const procedure = procedures?.[verb];
  if (!procedure) throw new Error(`There is no procedure ${path}.`);
  try {
    return { ok: true, value: await procedure(input) };
  } catch (error) {
    if (!(error instanceof Error) || !('code' in error)) throw error;
    return { ok: false, code: String(error.code), message: error.message };
  }
}

/** `work.push` answers well even when it refuses: the first action that was refused, or null. */
export function refusalIn(answer: Answer): string | null {
  if (!answer.ok) return answer.message;
  const results = (answer.value as { results?: { status: string; code: string }[] } | undefined)?.results;
  return results?.find((result) => result.status === 'refused')?.code ?? null;
}

/** The same answer without the ids the caller made up itself, which a push echoes. */
export function withoutEcho(answer: Answer): Answer {
  if (!answer.ok || typeof answer.value !== 'object' || answer.value === null) return answer;
  if (!('results' in answer.value)) return answer;
  const results = (answer.value.results as object[]).map((result) => ({ ...result, actionId: 'echoed' }));
  return { ok: true, value: { ...answer.value, results } };
}
