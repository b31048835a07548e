import type { LogEntry } from '@halfshaft/worklog';
import { Backoff } from './backoff';
import { addPage, type ConfirmedLog, emptyLog } from './confirmed-log';
import type { EventShelf } from './event-shelf';
import type { Trouble } from './sender';
import type { WorkClient } from './work-client';

export interface LogPullerParts {
  pull: WorkClient['pull'];
  shelf: EventShelf;
  /** What came in beyond what this device knew already; not at its first look at the log, which is history. */
  onNews: (before: ConfirmedLog, page: readonly LogEntry[]) => void;
  /** After each page, and when a request failed. */
  onChange: (trouble: Trouble | null) => void;
}

/** Fetches what the log has grown by, page by page. Asked again while fetching, it looks once more afterwards. */
export class LogPuller {
  log: ConfirmedLog = emptyLog;
  /** True once all there was has been fetched at least once. */
  caughtUp = false;
  private busy = false;
  private askedAgain = false;
  private stopped = false;
  private readonly backoff = new Backoff();

  constructor(private readonly parts: LogPullerParts) {}

  /** Goes on from what the device kept; what was pulled meanwhile wins. */
  restore(entries: readonly LogEntry[]): void {
    if (this.log.lastSeq > 0) return;
    this.log = addPage(emptyLog, entries);
    this.caughtUp = true;
  }

  /** The log has grown to this seq; 0 when nobody knows. */
  hear(seq: number): void {
    if (seq === 0 || seq > this.log.lastSeq) this.pull();
  }

  /** What the stream brought, if it goes on from what is known here; anything else is left to the next pull. */
  take(entries: readonly LogEntry[]): void {
    const fresh = entries.filter((entry) => entry.seq > this.log.lastSeq);
    if (this.busy || this.stopped || !this.caughtUp || fresh[0]?.seq !== this.log.lastSeq + 1) return;
    this.add(fresh);
    this.parts.onChange(null);
  }

  pull(): void {
    this.stopped = false;
    this.askedAgain = true;
    if (!this.busy) void this.run();
  }

  stop(): void {
    this.stopped = true;
    this.backoff.reset();
  }

  private async run(): Promise<void> {
    this.busy = true;
    try {
      while (this.askedAgain && !this.stopped) {
        this.askedAgain = false;
        await this.pullAll();
      }
    } finally {
      this.busy = false;
    }
  }

  private async pullAll(): Promise<void> {
    for (;;) {
      const answer = await this.parts.pull(this.log.lastSeq);
      if (!answer.ok) {
        if (answer.lost || answer.problem.code === 'unexpected') this.tryLater();
        this.parts.onChange(answer);
        return;
      }
      this.backoff.reset();
      const { entries, lastSeq } = answer.value;
      // A log that ends before what is known here was put back from a copy: what is known is no longer the truth.
      const behind = lastSeq < this.log.lastSeq;
      if (behind) {
        this.parts.shelf.dropEntries();
        this.log = emptyLog;
      }
      this.add(entries);
      const complete = !behind && (entries.length === 0 || this.log.lastSeq >= lastSeq);
      this.caughtUp ||= complete;
      this.parts.onChange(null);
      if (complete) return;
    }
  }

  private add(entries: readonly LogEntry[]): void {
    if (this.caughtUp) this.parts.onNews(this.log, entries);
    this.log = addPage(this.log, entries);
    this.parts.shelf.keepEntries(entries);
  }

  private tryLater(): void {
    if (!this.stopped) this.backoff.again(() => this.pull());
  }
}
