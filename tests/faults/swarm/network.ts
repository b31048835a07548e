import type { AppRouter } from '@halfshaft/api/router';
import { createTRPCClient, httpLink } from '@trpc/client';
import type { LiveHearing } from '../../../apps/web/features/work/live-source';
import type { Traffic } from './traffic';

/** What becomes of the next entries that are sent. */
export const FATES = ['lostBefore', 'lostAfter', 'twice', 'late'] as const;
export type Fate = (typeof FATES)[number];

/** One phone's way to the server: real requests, with all that happens to them on the road. */
export class Network {
  isCut = false;
  cookie = '';
  private fates: Fate[] = [];
  private late: (() => Promise<unknown>)[] = [];
  private readonly streams = new Set<AbortController>();

  constructor(
    private readonly url: string,
    private readonly traffic: Traffic,
  ) {}

  /** Without the timer that gathers questions in the pages: here time stands still. */
  openClient() {
    return createTRPCClient<AppRouter>({
      links: [
        httpLink({
          url: `${this.url}/trpc`,
          headers: () => ({ cookie: this.cookie }),
          fetch: (address, init) => this.send(String(address), init as RequestInit),
        }),
      ],
    });
  }

  cut(): void {
    this.isCut = true;
    for (const stream of this.streams) stream.abort();
  }

  awaits(fate: Fate): void {
    this.fates.push(fate);
  }

  /** Nothing more happens to what is sent from here on. */
  calm(): void {
    this.fates = [];
  }

  /** What was held up on the road reaches the server now, long after its sender gave up. */
  async deliverLate(): Promise<void> {
    const late = this.late;
    this.late = [];
    await Promise.all(late.map((send) => send()));
  }

  openLive(teamId: string, eventId: string, hearing: LiveHearing): () => void {
    const stream = new AbortController();
    let isClosed = false;
    this.streams.add(stream);
    const address = `${this.url}/live?${new URLSearchParams({ team: teamId, event: eventId })}`;
    void this.follow(address, stream.signal, hearing)
      .catch(() => undefined)
      .then(() => isClosed || hearing.lost())
      .finally(() => this.streams.delete(stream));
    return () => {
      isClosed = true;
      stream.abort();
    };
  }

  private async follow(address: string, signal: AbortSignal, hearing: LiveHearing): Promise<void> {
    if (this.isCut) return;
    const answer = await fetch(address, { headers: { cookie: this.cookie }, signal });
    if (answer.status !== 200 || !answer.body) return;
    hearing.opened();
    let unread = '';
    for await (const text of answer.body.pipeThrough(new TextDecoderStream())) {
      const blocks = (unread + text).split('\n\n');
      unread = blocks.pop() ?? '';
      for (const block of blocks) hearBlock(block, hearing);
    }
  }

  private async send(address: string, init: RequestInit): Promise<Response> {
    const fate = address.includes('work.push') ? this.fates.shift() : undefined;
    // The body is text, so it can be sent again; the signal is the sender's patience, not the road's.
    const go = () => this.traffic.during(fetch(address, { ...init, signal: null }));
    if (fate === 'late') this.late.push(go);
    if (this.isCut || fate === 'lostBefore' || fate === 'late') throw new TypeError('Cut on the way there.');
    const [answer] = await Promise.all([go(), fate === 'twice' ? go() : null]);
    if (this.isCut || fate === 'lostAfter') throw new TypeError('Cut on the way back.');
    return answer;
  }
}

/** As a browser's own reader of such streams understands a block. */
function hearBlock(block: string, hearing: LiveHearing): void {
  const data = /^data: (.*)$/m.exec(block)?.[1];
  if (data === undefined) return;
  if (block.startsWith('event: entries\n')) hearing.entries(JSON.parse(data));
  else hearing.seq(Number(data));
}
