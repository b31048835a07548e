import { vi } from 'vitest';

/** A clock that stands still until it is advanced; the tabs' pauses and timers end as it says. */
export class VirtualClock {
  private passed = 0;
  private readonly begun = Date.now();

  now(): number {
    return this.begun + this.passed;
  }

  async advance(millis: number): Promise<void> {
    this.passed += millis;
    await vi.advanceTimersByTimeAsync(millis);
  }
}
