import {
  bringInAddress,
  CARRY_VERSION,
  type LookOutcome,
  MOST_FIRST_LINE,
  type Problem,
  readFirstLine,
  type TakeOutcome,
} from '@halfshaft/contract';
import { type Sent, sendPicture } from '../photos/send-picture';

type Answer<T> = { ok: true; outcome: T } | { ok: false; problem: Problem };

const NO_FILE =
  'This is no file of an event. Choose the one that the other server made; its name ends in .halfshaft.';
const OTHER_VERSION =
  'The file was made by another version of Halfshaft. Bring both servers to the same version, then fetch it once more.';
const CUT_OFF = 'The file is not whole: its end is missing. Fetch it once more from the other server.';
const NOT_REACHED =
  'The server cannot be reached. The file is still chosen; try again when you have a connection.';

/** Asks what is in the file and what bringing it in would do. */
export function lookAtFile(file: File): Promise<Answer<LookOutcome>> {
  return ask<LookOutcome>(file, bringInAddress('look'));
}

/** Brings the log of the file in. `person`: who one is, in a team that is new to the server. */
export function takeFile(file: File, person: string | undefined): Promise<Answer<TakeOutcome>> {
  return ask<TakeOutcome>(file, bringInAddress('take', person));
}

/** What became of the pictures that were missing: how many came, and what was said of the others. */
export interface PicturesSent {
  came: number;
  waiting: string[];
}

/** Sends the pictures that the server has not, one after the other, as they lie behind the log. */
export async function sendPictures(
  file: File,
  { teamId, pictures }: TakeOutcome,
  onProgress: (sent: number) => void,
): Promise<PicturesSent> {
  const result: PicturesSent = { came: 0, waiting: [] };
  let from = (await findLogPart(file))?.to ?? file.size;
  for (const { photoId, bytes, isMissing } of pictures) {
    const picture = file.slice(from, from + bytes);
    from += bytes;
    if (!isMissing) continue;
    const sent = await sendPicture(teamId, photoId, new Uint8Array(await picture.arrayBuffer()));
    if (sent.ok) result.came += 1;
    else result.waiting.push(whyNot(sent));
    onProgress(result.came + result.waiting.length);
  }
  return result;
}

function whyNot(sent: Exclude<Sent, { ok: true }>): string {
  if (sent.why === 'refused') return sent.sentence;
  return sent.why === 'signInNeeded'
    ? 'Your sign-in has run out. Sign in, then bring the same file in again.'
    : 'The server was not reached. Bring the same file in again.';
}

async function findLogPart(file: File) {
  return readFirstLine(await file.slice(0, MOST_FIRST_LINE).text());
}

async function ask<T>(file: File, address: string): Promise<Answer<T>> {
  const part = await findLogPart(file);
  if (!part) return refused(NO_FILE);
  if (part.version !== CARRY_VERSION) return refused(OTHER_VERSION);
  if (file.size < part.to) return refused(CUT_OFF);
  try {
    const response = await fetch(address, {
      method: 'PUT',
      headers: { 'content-type': 'application/gzip' },
      body: file.slice(part.from, part.to),
    });
    const answer: unknown = await response.json();
    return response.ok ? { ok: true, outcome: answer as T } : { ok: false, problem: answer as Problem };
  } catch {
    return refused(NOT_REACHED);
  }
}

function refused(message: string): { ok: false; problem: Problem } {
  return { ok: false, problem: { code: 'badInput', message, fields: [] } };
}
