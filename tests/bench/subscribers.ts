import { Agent, get, type IncomingMessage } from 'node:http';
import type { Bench } from './open-bench';

export interface Subscribers {
  /** Entries that reached all of them together, and how often they had to ask for what the stream did not bring. */
  counts(): { entries: number; pulls: number };
  close(): void;
}

const agent = new Agent({ keepAlive: true, maxSockets: Number.POSITIVE_INFINITY });

/** So many phones without a screen, spread over the addresses: each takes what the stream brings and asks for what is missing. */
export async function openSubscribers(
  bench: Bench,
  urls: readonly string[],
  count: number,
): Promise<Subscribers> {
  const phones: Phone[] = [];
  for (let at = 0; at < count; at += 1) {
    const phone = new Phone(bench, urls[at % urls.length] ?? '');
    await phone.listen();
    phones.push(phone);
  }
  const sumOf = (part: (phone: Phone) => number) => phones.reduce((sum, phone) => sum + part(phone), 0);
  return {
    counts: () => ({ entries: sumOf(({ entries }) => entries), pulls: sumOf(({ pulls }) => pulls) }),
    close() {
      for (const phone of phones) phone.stream?.destroy();
    },
  };
}

class Phone {
  stream: IncomingMessage | null = null;
  entries = 0;
  pulls = 0;
  private known = 0;
  private isAsking = false;

  constructor(
    private readonly bench: Bench,
    private readonly url: string,
  ) {}

  async listen(): Promise<void> {
    const { teamId: team, eventId: event } = this.bench;
    await this.pull();
    this.pulls = 0;
    const stream = await this.ask(`/live?${new URLSearchParams({ team, event })}`);
    if (stream.statusCode !== 200) throw new Error(`/live answered with ${stream.statusCode}.`);
    let unread = '';
    stream.on('data', (chunk: Buffer) => {
      const blocks = (unread + chunk).split('\n\n');
      unread = blocks.pop() ?? '';
      for (const block of blocks) this.hear(block);
    });
    this.stream = stream;
  }

  private hear(block: string): void {
    const data = /^data: (.*)$/m.exec(block)?.[1] ?? '0';
    if (block.startsWith('event: entries')) this.take(JSON.parse(data));
    else if (Number(data) > this.known && !this.isAsking) void this.pull();
  }

  private take(entries: { seq: number }[]): void {
    const fresh = entries.filter(({ seq }) => seq > this.known);
    if (fresh[0]?.seq !== this.known + 1) return;
    this.known = fresh.at(-1)?.seq ?? this.known;
    this.entries += fresh.length;
  }

  private async pull(): Promise<void> {
    this.isAsking = true;
    this.pulls += 1;
    const { teamId, eventId } = this.bench;
    const input = JSON.stringify({ teamId, eventId, since: this.known });
    const answer = await this.ask(`/trpc/work.pull?${new URLSearchParams({ input })}`);
    let text = '';
    for await (const chunk of answer) text += chunk;
    const { entries, lastSeq } = JSON.parse(text).result.data;
    this.known = Math.max(this.known, entries.at(-1)?.seq ?? 0);
    this.entries += entries.length;
    this.isAsking = false;
    if (this.known < lastSeq) await this.pull();
  }

  private ask(path: string): Promise<IncomingMessage> {
    const headers = { cookie: this.bench.cookie };
    return new Promise((done, fail) =>
      get(`${this.url}${path}`, { agent, headers }, done).once('error', fail),
    );
  }
}
