import { setImmediate } from 'node:timers/promises';

/** So many turns of the process without anything under way, and nothing will come of what was begun. */
const QUIET_TURNS = 6;

/** What is under way between tabs, their databases and the server. */
export class Traffic {
  private busy = 0;
  private waiting: (() => void)[] = [];

  async during<T>(work: Promise<T>): Promise<T> {
    this.busy += 1;
    try {
      return await work;
    } finally {
      this.busy -= 1;
      if (this.busy === 0) for (const wake of this.waiting.splice(0)) wake();
    }
  }

  async quiet(): Promise<void> {
    for (let turns = 0; turns < QUIET_TURNS; turns += 1) {
      if (this.busy > 0) {
        await new Promise<void>((wake) => this.waiting.push(wake));
        turns = 0;
      }
      await setImmediate();
    }
  }
}
