import type { KeptStorage } from './kept-storage';

/** Longer than a request may take, so that a tab that is sending is not overtaken. */
const TURN_MILLIS = 25_000;

interface Turn {
  tab: string;
  until: number;
}

/**
 * Of several tabs one sends, so that actions arrive in the order of the device. The turn runs out by itself, since a
 * closed tab says no farewell. Should two send at once after all, the server takes each action once.
 */
export class SendTurn {
  constructor(
    private readonly storage: KeptStorage,
    private readonly key: string,
    private readonly tab: string,
    private readonly now: () => number,
  ) {}

  /** True when this tab may send. */
  take(): boolean {
    const turn = this.storage.read(this.key);
    const now = this.now();
    if (isTurn(turn) && turn.tab !== this.tab && isRunning(turn, now)) return false;
    this.storage.write(this.key, { tab: this.tab, until: now + TURN_MILLIS } satisfies Turn);
    return true;
  }

  give(): void {
    const turn = this.storage.read(this.key);
    if (isTurn(turn) && turn.tab === this.tab) this.storage.write(this.key, null);
  }
}

/** A turn that would end later than any turn can was written before the device's clock was set back. */
function isRunning({ until }: Turn, now: number): boolean {
  return until > now && until <= now + TURN_MILLIS;
}

function isTurn(stored: unknown): stored is Turn {
  return typeof stored === 'object' && stored !== null && 'tab' in stored && 'until' in stored;
}
