import { createHash } from 'node:crypto';
import { promisify } from 'node:util';
import { gunzip, gzip } from 'node:zlib';
import {
  CARRY_VERSION,
  type CarriedEvent,
  carriedAction,
  carriedHead,
  carriedLastLine,
  MOST_CARRY_CHARACTERS,
} from '@halfshaft/contract';
import { AppError } from './errors';
import { mendText } from './mend-text';

const pack = promisify(gzip);
const unpack = promisify(gunzip);
/** After so many lines whoever else waits for this process gets a turn. */
const LINES_AT_ONCE = 500;

const DAMAGED =
  'The file was damaged, cut off or changed on the way, so nothing was brought in. Fetch it once more from the other server.';
const OTHER_VERSION =
  'The file was made by another version of Halfshaft. Bring both servers to the same version, then fetch it once more.';
const TOO_LARGE = 'What is in the file is larger than is taken, so nothing was brought in.';

/** The log part of a file: a head, a line for each action, last a check sum of what stands before it. */
export async function packCarried({ head, actions }: CarriedEvent): Promise<Buffer> {
  const lines = [head, ...actions].map((line) => `${JSON.stringify(line)}\n`).join('');
  const last = { actions: actions.length, sha256: sumOf(lines) };
  return pack(`${lines}${JSON.stringify(last)}\n`);
}

/**
 * Reads a log part that comes from elsewhere: it may be anything.
 *
 * @throws AppError with a sentence when it is no such file, is cut off, was changed, or is of another version
 */
export async function unpackCarried(file: Uint8Array): Promise<CarriedEvent> {
  const text = await unpackText(file);
  const end = text.lastIndexOf('\n', text.length - 2) + 1;
  const body = text.slice(0, end);
  const last = carriedLastLine.safeParse(readJson(text.slice(end)));
  if (!last.success || last.data.sha256 !== sumOf(body)) throw damaged();
  const lines = body.split('\n').slice(0, -1);
  const [first = '', ...others] = lines;
  const start = readJson(first);
  if (!isOfVersion(start)) throw new AppError('badInput', OTHER_VERSION);
  const head = carriedHead.safeParse(mendText(start));
  if (!head.success || others.length !== last.data.actions) throw damaged();
  return { head: head.data, actions: await readActions(others) };
}

async function readActions(lines: string[]): Promise<CarriedEvent['actions']> {
  const actions: CarriedEvent['actions'] = [];
  for (const [index, line] of lines.entries()) {
    if (index % LINES_AT_ONCE === 0) await new Promise(setImmediate);
    const action = carriedAction.safeParse(mendText(readJson(line)));
    if (!action.success) throw damaged();
    actions.push(action.data);
  }
  return actions;
}

async function unpackText(file: Uint8Array): Promise<string> {
  try {
    return (await unpack(file, { maxOutputLength: MOST_CARRY_CHARACTERS })).toString('utf8');
  } catch (error) {
    const isHuge = error instanceof Error && 'code' in error && error.code === 'ERR_BUFFER_TOO_LARGE';
    throw isHuge ? new AppError('tooMuch', TOO_LARGE) : damaged();
  }
}

function readJson(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    throw damaged();
  }
}

function isOfVersion(start: unknown): boolean {
  return typeof start === 'object' && start !== null && 'version' in start && start.version === CARRY_VERSION;
}

function sumOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

function damaged(): AppError {
  return new AppError('badInput', DAMAGED);
}
