import { type Problem, photoAddress } from '@halfshaft/contract';

/** `later`: the server was not reached, or has trouble of its own. */
export type Sent =
  | { ok: true }
  | { ok: false; why: 'later' | 'signInNeeded' }
  | { ok: false; why: 'refused'; sentence: string };

const MOST_WAIT_MILLIS = 60_000;
/** The server has one answer for what is not there and what is not yours, and no words that would help here. */
const NOT_IN_LOG =
  'The log of your team knows no such photo. It may have been taken back, or you are no longer in the team.';

/** Brings one picture to the server. Brought twice, it is there once. */
export async function sendPicture(
  team: string,
  photoId: string,
  file: Uint8Array<ArrayBuffer>,
): Promise<Sent> {
  try {
    const response = await fetch(photoAddress(team, photoId), {
      method: 'PUT',
      headers: { 'content-type': 'image/jpeg' },
      body: file,
      signal: AbortSignal.timeout(MOST_WAIT_MILLIS),
    });
    if (response.ok) return { ok: true };
    return ofProblem(response.status >= 500 ? null : await response.json());
  } catch {
    return { ok: false, why: 'later' };
  }
}

/** What is no answer of ours (a proxy's page, a hotel's sign-in) says nothing about the picture. */
function ofProblem(answer: Partial<Problem> | null): Sent {
  if (typeof answer?.message !== 'string' || answer.code === 'unexpected') return { ok: false, why: 'later' };
  if (answer.code === 'signInNeeded') return { ok: false, why: 'signInNeeded' };
  return { ok: false, why: 'refused', sentence: answer.code === 'unknown' ? NOT_IN_LOG : answer.message };
}
