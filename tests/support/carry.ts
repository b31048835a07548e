import {
  bringInAddress,
  carryAddress,
  MOST_FIRST_LINE,
  readFirstLine,
  type TakeOutcome,
} from '@halfshaft/contract';
import { bringPicture } from './photo';

interface At {
  url: string;
  cookie: string;
}

/** Fetches an event as a file. */
export async function fetchCarried({ url, cookie }: At, teamId: string, eventId: string): Promise<Buffer> {
  const response = await fetch(url + carryAddress(teamId, eventId), { headers: { cookie } });
  if (!response.ok) throw new Error(`The file was not given: ${await response.text()}`);
  return Buffer.from(await response.arrayBuffer());
}

/** The log part of a file, as a page cuts it out. */
export function logPartOf(file: Buffer): Buffer {
  const line = readFirstLine(file.subarray(0, MOST_FIRST_LINE).toString());
  if (!line) throw new Error('The file has no first line.');
  return file.subarray(line.from, line.to);
}

/** Brings a log part in, or looks at it; whatever the answer is. */
export async function tryBringIn(
  { url, cookie }: At,
  logPart: Uint8Array,
  step: 'look' | 'take' = 'take',
  person?: string,
): Promise<{ status: number; body: Record<string, unknown> }> {
  const response = await fetch(url + bringInAddress(step, person), {
    method: 'PUT',
    headers: { cookie, 'content-type': 'application/gzip' },
    body: new Uint8Array(logPart),
  });
  return { status: response.status, body: await response.json() };
}

/** Brings a whole file in as the page does: the log part, then each picture that is missing. Returns the answer to the log. */
export async function bringIn(at: At, file: Buffer, person?: string): Promise<TakeOutcome> {
  const { status, body } = await tryBringIn(at, logPartOf(file), 'take', person);
  if (status !== 200) throw new Error(`The file was not taken: ${JSON.stringify(body)}`);
  const outcome = body as unknown as TakeOutcome;
  let from = readFirstLine(file.subarray(0, MOST_FIRST_LINE).toString())?.to ?? 0;
  for (const { photoId, bytes, isMissing } of outcome.pictures) {
    const picture = file.subarray(from, from + bytes);
    from += bytes;
    if (!isMissing) continue;
    const brought = await bringPicture({ ...at, teamId: outcome.teamId, photoId, file: picture });
    if (brought.status !== 200) throw new Error(`A picture was not taken: ${JSON.stringify(brought.body)}`);
  }
  return outcome;
}
