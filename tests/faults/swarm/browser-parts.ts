import type { TabChannel } from '../../../apps/web/lib/tab-channel';

/** How the tabs of one browser tell each other. */
export class Channels<Message> {
  private readonly tabs = new Set<Set<(message: Message) => void>>();

  open(): TabChannel<Message> {
    const own = new Set<(message: Message) => void>();
    this.tabs.add(own);
    return {
      tell: (message) => {
        for (const tab of this.tabs) if (tab !== own) for (const hear of tab) hear(structuredClone(message));
      },
      hear(listener) {
        own.add(listener);
        return () => own.delete(listener);
      },
    };
  }
}

/** The locks of one browser: each goes to the tabs in the order in which they ask, and ends with its tab. */
export class Locks {
  private last: Promise<unknown> = Promise.resolve();

  of(ended: Promise<void>): LockManager {
    const request = (_name: string, { signal }: { signal: AbortSignal }, work: () => Promise<void>) => {
      const mine = this.last.then(() => {
        signal.throwIfAborted();
        return Promise.race([work(), ended]);
      });
      this.last = mine.catch(() => undefined);
      return mine;
    };
    return { request, query: async () => ({}) } as unknown as LockManager;
  }
}
