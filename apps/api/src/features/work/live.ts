import { type LogNotice, listenToLog } from '@halfshaft/store';

/** Tells a subscriber that the log has grown to this seq; the content is pulled. */
export type Hear = (seq: number) => void;

export interface LiveLog {
  /** Returns a function that ends the subscription. */
  subscribe(of: { teamId: string; eventId: string }, hear: Hear): () => void;
  subscriberCount(): number;
  close(): Promise<void>;
}

/** A notice without a seq: something may have been missed, so pull. */
const UNKNOWN_SEQ = 0;

/** One database listener for this process, handed on to those who watch an event. */
export async function openLiveLog(directUrl: string): Promise<LiveLog> {
  const listeners = new Map<string, Set<Hear>>();
  const all = () => [...listeners.values()].flatMap((set) => [...set]);
  const tell = ({ team, event, seq }: LogNotice) => {
    for (const hear of listeners.get(keyOf(team, event)) ?? []) hear(seq);
  };
  const log = await listenToLog(directUrl, tell, () => {
    for (const hear of all()) hear(UNKNOWN_SEQ);
  });
  return {
    subscribe({ teamId, eventId }, hear) {
      const key = keyOf(teamId, eventId);
      const set = listeners.get(key) ?? new Set<Hear>();
      listeners.set(key, set.add(hear));
      return () => {
        set.delete(hear);
        if (set.size === 0) listeners.delete(key);
      };
    },
    subscriberCount: () => all().length,
    close: () => log.close(),
  };
}

function keyOf(team: string, event: string): string {
  return `${team}/${event}`;
}
