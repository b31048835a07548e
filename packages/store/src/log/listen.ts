import pg from 'pg';
import { LOG_CHANNEL, type LogNotice } from './channel';

const FIRST_RETRY_MS = 250;
const LONGEST_RETRY_MS = 10_000;

export interface LogListener {
  close(): Promise<void>;
}

/**
 * One connection per process that hears of every append. `directUrl` must not lead through a pooler. A lost connection
 * is opened again with growing pauses; `onGap` is then called, since notices may have been missed: clients pull since
 * their own seq, so a missed notice costs a moment and nothing else.
 */
export async function listenToLog(
  directUrl: string,
  onNotice: (notice: LogNotice) => void,
  onGap: () => void,
): Promise<LogListener> {
  let closed = false;
  let client: pg.Client | null = null;
  let timer: NodeJS.Timeout | null = null;

  async function connect(): Promise<void> {
    const next = new pg.Client({ connectionString: directUrl });
    next.on('notification', (message) => onNotice(JSON.parse(message.payload ?? '{}') as LogNotice));
    next.on('error', () => retry(FIRST_RETRY_MS));
    await next.connect();
    await next.query(`LISTEN ${LOG_CHANNEL}`);
    client = next;
  }

  function retry(pauseMs: number): void {
    if (closed || timer) return;
    client = null;
    timer = setTimeout(() => {
      timer = null;
      connect().then(onGap, () => retry(Math.min(pauseMs * 2, LONGEST_RETRY_MS)));
    }, pauseMs);
  }

  await connect();
  return {
    async close() {
      closed = true;
      if (timer) clearTimeout(timer);
      await client?.end();
    },
  };
}
