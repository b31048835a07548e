import { rmSync } from 'node:fs';
import { join } from 'node:path';
import { HOME_FOLDER, readMark, writeMark } from './home-folder';
import { StartProblem } from './problem';

interface RunMark {
  pid: number;
  url: string;
}

/** Two starts on one folder would share one database folder, which PostgreSQL forbids. */
export function refuseSecondStart(): void {
  const other = readMark<RunMark>('running');
  if (other && other.pid !== process.pid && isAlive(other.pid)) {
    throw new StartProblem(
      `Halfshaft already runs from this folder: ${other.url} (process ${other.pid}). Stop that one first with Ctrl-C.`,
    );
  }
}

export function markRunning(url: string): void {
  writeMark('running', { pid: process.pid, url });
}

export function unmarkRunning(): void {
  if (readMark<RunMark>('running')?.pid === process.pid)
    rmSync(join(HOME_FOLDER, 'running.json'), { force: true });
}

function isAlive(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false; // no such process: the earlier start was killed hard and left its mark
  }
}
