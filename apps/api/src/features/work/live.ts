import { type LogNotice, listenToLog } from '@halfshaft/store';
import type { LogNews } from './service';

/** The log has grown to this seq. `entries`: what is new, as JSON, where it is at hand; else it is pulled. */
export interface Growth {
  seq: number;
  entries: string | null;
}

export interface Watcher {
  userId: string;
  hear(growth: Growth): void;
  /** This account may watch no longer. */
  end(): void;
}

interface Place {
  teamId: string;
  eventId: string;
}

export type ReadNews = (of: Place, userIds: readonly string[], since: number) => Promise<LogNews | null>;

export interface LiveLog {
  /** Returns a function that ends the subscription. */
  subscribe(of: Place, watcher: Watcher): () => void;
  subscriberCount(): number;
  close(): Promise<void>;
}

/** A notice without a seq: something may have been missed, so pull. */
const UNKNOWN: Growth = { seq: 0, entries: null };

/** One database listener for this process, handed on to those who watch an event. */
export async function openLiveLog(directUrl: string, readNews: ReadNews): Promise<LiveLog> {
  const rooms = new Map<string, Room>();
  const grown = ({ team, event, seq }: LogNotice) => rooms.get(keyOf(team, event))?.grown(seq);
  const log = await listenToLog(directUrl, grown, () => {
    for (const room of rooms.values()) room.tellAll(UNKNOWN);
  });
  return {
    subscribe(of, watcher) {
      const key = keyOf(of.teamId, of.eventId);
      const room = rooms.get(key) ?? new Room((userIds, since) => readNews(of, userIds, since));
      rooms.set(key, room);
      room.watchers.add(watcher);
      return () => {
        room.watchers.delete(watcher);
        if (room.watchers.size === 0) rooms.delete(key);
      };
    },
    subscriberCount: () => [...rooms.values()].reduce((sum, { watchers }) => sum + watchers.size, 0),
    close: () => log.close(),
  };
}

/**
 * Those who watch one event. What is new is read once for all of them, since three hundred phones that each ask for the same
 * few lines keep a small server busy for a second. Whoever left the team meanwhile is told nothing more.
 */
class Room {
  readonly watchers = new Set<Watcher>();
  private newest = 0;
  private told: number | null = null;
  private isReading = false;

  constructor(
    private readonly read: (userIds: readonly string[], since: number) => Promise<LogNews | null>,
  ) {}

  grown(seq: number): void {
    this.newest = Math.max(this.newest, seq);
    if (!this.isReading) void this.catchUp();
  }

  tellAll(growth: Growth): void {
    for (const watcher of this.watchers) watcher.hear(growth);
  }

  private async catchUp(): Promise<void> {
    this.isReading = true;
    while (this.told === null || this.told < this.newest) {
      const since = this.told ?? this.newest - 1;
      this.told = this.newest;
      await this.tell(this.newest, since);
    }
    this.isReading = false;
  }

  private async tell(seq: number, since: number): Promise<void> {
    const asked = [...this.watchers];
    const userIds = asked.map(({ userId }) => userId);
    // A database that cannot be asked says nothing of who may watch; what is told then has no content.
    const news = await this.read(userIds, since).catch(() => 'unread' as const);
    if (news === 'unread') return this.tellAll({ seq, entries: null });
    const entries = news && news.entries.length > 0 ? JSON.stringify(news.entries) : null;
    for (const watcher of asked) {
      if (news?.watchers.has(watcher.userId)) watcher.hear({ seq, entries });
      else watcher.end();
    }
  }
}

function keyOf(team: string, event: string): string {
  return `${team}/${event}`;
}
