/** Tells the other tabs of this browser, and hears from them. Where browsers have none, each tab finds out when it looks. */
export interface TabChannel<Message> {
  tell(message: Message): void;
  /** The returned function stops hearing. */
  hear(listener: (message: Message) => void): () => void;
}

/** Opened at the first use: the static build must not open anything. */
export function tabChannel<Message>(name: string): TabChannel<Message> {
  let channel: BroadcastChannel | null = null;
  const listeners = new Set<(message: Message) => void>();
  function open(): BroadcastChannel | null {
    if (channel || typeof window === 'undefined' || typeof BroadcastChannel === 'undefined') return channel;
    channel = new BroadcastChannel(`halfshaft.${name}`);
    channel.onmessage = (event: MessageEvent<Message>) => {
      for (const listener of listeners) listener(event.data);
    };
    return channel;
  }
  return {
    tell: (message) => open()?.postMessage(message),
    hear(listener) {
      open();
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
}
