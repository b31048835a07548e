import { Agent, type ClientRequest, request } from 'node:http';

export interface Posting {
  url: string;
  cookie: string;
  body: string;
}

export interface Answer {
  status: number;
  body: string;
}

/**
 * Posts all of them at once. Each request is sent but for its last byte, on a connection of its own; only when all are on
 * their way do the last bytes follow, in one go. So every request is out before the first one can be answered.
 */
export async function postAllAtOnce(postings: Posting[]): Promise<Answer[]> {
  const agent = new Agent({ maxSockets: Number.POSITIVE_INFINITY });
  try {
    const held = await Promise.all(postings.map((posting) => beginPosting(agent, posting)));
    for (const { sending, lastByte } of held) sending.end(lastByte);
    return await Promise.all(held.map(({ answer }) => answer));
  } finally {
    agent.destroy();
  }
}

async function beginPosting(agent: Agent, { url, cookie, body }: Posting) {
  const bytes = Buffer.from(body);
  const headers = { cookie, 'content-type': 'application/json', 'content-length': bytes.length };
  const sending = request(url, { method: 'POST', agent, headers });
  const answer = readAnswer(sending);
  await new Promise<void>((resolve, reject) => {
    sending.once('error', reject);
    sending.write(bytes.subarray(0, -1), () => resolve());
  });
  return { sending, answer, lastByte: bytes.subarray(-1) };
}

function readAnswer(sending: ClientRequest): Promise<Answer> {
  return new Promise((resolve, reject) => {
    sending.once('error', reject);
    sending.once('response', (response) => {
      const chunks: Buffer[] = [];
      response.on('data', (chunk: Buffer) => chunks.push(chunk));
      response.once('error', reject);
      response.once('end', () =>
        resolve({ status: response.statusCode ?? 0, body: Buffer.concat(chunks).toString() }),
      );
    });
  });
}
