/** A stream of `/live`, as a phone holds it. */
export interface LiveStream {
  /** Waits for the next block of the stream that is not yet read; throws when none comes in time. */
  next(withinMs?: number): Promise<string>;
  close(): void;
}

const SOON_MS = 5_000;

/** The answer is checked by the caller: only a 200 has a stream. */
export async function openLiveStream(url: string, cookie: string): Promise<LiveStream> {
  const stop = new AbortController();
  const answer = await fetch(url, { headers: { cookie }, signal: stop.signal });
  if (answer.status !== 200 || !answer.body) throw new Error(`/live answered with ${answer.status}.`);
  const reader = answer.body.pipeThrough(new TextDecoderStream()).getReader();
  let unread = '';
  let reading: ReturnType<typeof reader.read> | null = null;
  return {
    async next(withinMs = SOON_MS) {
      const endsAt = Date.now() + withinMs;
      while (!unread.includes('\n\n')) {
        reading ??= reader.read();
        const chunk = await Promise.race([reading, pause(endsAt - Date.now())]);
        if (!chunk) throw new Error(`Nothing came on /live within ${withinMs} ms.`);
        if (chunk.done) throw new Error('The stream of /live ended.');
        reading = null;
        unread += chunk.value;
      }
      const end = unread.indexOf('\n\n');
      const block = unread.slice(0, end);
      unread = unread.slice(end + 2);
      return block;
    },
    close: () => stop.abort(),
  };
}

function pause(ms: number): Promise<null> {
  return new Promise((resolve) => setTimeout(() => resolve(null), Math.max(0, ms)));
}
