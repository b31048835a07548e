import type { LogEntry } from '@halfshaft/worklog';
import { Backoff } from './backoff';

/** What a live source tells. */
export interface LiveHearing {
  opened(): void;
  /** The log has grown to this seq; 0: something may have been missed. */
  seq(seq: number): void;
  /** What is new in the log, told before its seq; often nothing, then it is asked for. */
  entries(entries: readonly LogEntry[]): void;
  lost(): void;
}

/** Opens a stream; the returned function closes it. Tests put their own in. */
export type OpenLive = (hearing: LiveHearing) => () => void;

export function openLiveOf(teamId: string, eventId: string): OpenLive {
  return (hearing) => {
    const source = new EventSource(`/live?${new URLSearchParams({ team: teamId, event: eventId })}`);
    source.onopen = () => hearing.opened();
    source.onmessage = (message) => hearing.seq(Number(message.data));
    source.addEventListener('entries', (message) => hearing.entries(JSON.parse(message.data)));
    source.onerror = () => {
      // The browser would try again by itself, but gives up for good after an error answer.
      source.close();
      hearing.lost();
    };
    return () => source.close();
  };
}

const POLL_MILLIS = 20_000;

export interface LiveFeedParts {
  open: OpenLive;
  /** Called with each seq told, and with 0 at intervals while the stream is down. */
  onSeq: (seq: number) => void;
  onEntries: LiveHearing['entries'];
  onChange: (connected: boolean) => void;
}

/** Keeps a stream open: again after growing pauses, and in the meantime asks at intervals. */
export class LiveFeed {
  private close: (() => void) | null = null;
  private poll: ReturnType<typeof setInterval> | undefined;
  private readonly backoff = new Backoff();
  private connected = false;

  constructor(private readonly parts: LiveFeedParts) {}

  start(): void {
    if (this.close) return;
    this.startPolling();
    this.close = this.parts.open({
      opened: () => this.setConnected(true),
      seq: (seq) => this.parts.onSeq(seq),
      entries: (entries) => this.parts.onEntries(entries),
      lost: () => this.onLost(),
    });
  }

  stop(): void {
    this.close?.();
    this.close = null;
    this.backoff.reset();
    this.stopPolling();
    this.setConnected(false);
  }

  /** A network is back, or a person asked: at once instead of after the pause. */
  hurry(): void {
    if (this.connected) return;
    this.close?.();
    this.close = null;
    this.backoff.reset();
    this.start();
  }

  private onLost(): void {
    if (!this.close) return;
    this.close = null;
    this.setConnected(false);
    this.startPolling();
    this.backoff.again(() => this.start());
  }

  private setConnected(connected: boolean): void {
    if (connected) {
      this.backoff.reset();
      this.stopPolling();
    }
    if (connected === this.connected) return;
    this.connected = connected;
    this.parts.onChange(connected);
  }

  private startPolling(): void {
    this.poll ??= setInterval(() => this.parts.onSeq(0), POLL_MILLIS);
  }

  private stopPolling(): void {
    clearInterval(this.poll);
    this.poll = undefined;
  }
}
