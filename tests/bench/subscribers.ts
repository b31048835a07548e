import { Agent, get, type IncomingMessage } from 'node:http';
import type { Bench } from './open-bench';

export interface Subscribers {
  /** Questions for the log asked so far. */
  pulls(): number;
  close(): void;
}

const agent = new Agent({ keepAlive: true, maxSockets: Number.POSITIVE_INFINITY });

/** So many phones without a screen, spread over the addresses: each hears the stream, and where `pulls` asks for what is new. */
export async function openSubscribers(
  bench: Bench,
  urls: readonly string[],
  count: number,
  pulls: boolean,
): Promise<Subscribers> {
  let asked = 0;
  const { teamId, eventId } = bench;
  const headers = { cookie: bench.cookie };
  const streams: IncomingMessage[] = [];
  for (let at = 0; at < count; at += 1) {
    const url = urls[at % urls.length] ?? '';
    const stream = await answerOf(
      `${url}/live?${new URLSearchParams({ team: teamId, event: eventId })}`,
      headers,
    );
    if (stream.statusCode !== 200) throw new Error(`/live answered with ${stream.statusCode}.`);
    let known = 0;
    let isAsking = false;
    stream.on('data', async (block: Buffer) => {
      const told = Math.max(0, ...[...String(block).matchAll(/data: (\d+)/g)].map(([, seq]) => Number(seq)));
      if (!pulls || isAsking || told <= known) return;
      isAsking = true;
      asked += 1;
      const input = encodeURIComponent(JSON.stringify({ teamId, eventId, since: known }));
      const answer = await answerOf(`${url}/trpc/work.pull?input=${input}`, headers);
      let text = '';
      for await (const chunk of answer) text += chunk;
      known = JSON.parse(text).result.data.lastSeq;
      isAsking = false;
    });
    streams.push(stream);
  }
  return { pulls: () => asked, close: () => streams.map((stream) => stream.destroy()) };
}

function answerOf(address: string, headers: Record<string, string>): Promise<IncomingMessage> {
  return new Promise((done, fail) => get(address, { agent, headers }, done).once('error', fail));
}
