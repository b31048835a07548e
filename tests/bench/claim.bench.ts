import { randomUUID } from 'node:crypto';
import { Agent } from 'node:http';
import { makeAction, taskRef } from '../support/event';
import { type Claim, openBareDoor } from './bare-door';
import { medianOf, ROUNDS } from './median-of';
import { openBench, POOL_SIZE } from './open-bench';
import { postJson } from './post-json';
import { recordStatements } from './record-statements';

const CLAIMS_A_ROUND = 160;
const CONCURRENCIES = [1, 16];

type Send = (agent: Agent, claim: Claim) => Promise<string>;

const bench = await openBench();
let nextCard = 0;

function freshClaim(): Claim {
  const cardId = bench.cardIds[nextCard];
  nextCard += 1;
  if (!cardId) throw new Error('There are no fresh cards left.');
  return { actionId: randomUUID(), cardId };
}

const sendToApi: Send = async (agent, { actionId, cardId }) => {
  const { teamId, eventId, entryId, personId } = bench;
  const task = taskRef(entryId, cardId);
  const actions = [makeAction({ kind: 'takeTask', args: { task } }, personId, { actionId })];
  const text = await postJson(agent, `${bench.apiUrl}/trpc/work.push`, bench.cookie, {
    teamId,
    eventId,
    actions,
  });
  if (!text.includes('"status":"accepted"')) throw new Error(`A fresh claim was not accepted: ${text}`);
  return text;
};

async function millisecondsAClaim(send: Send, concurrency: number): Promise<number> {
  const agent = new Agent({ keepAlive: true, maxSockets: concurrency });
  const claims = Array.from({ length: CLAIMS_A_ROUND }, freshClaim);
  const work = async () => {
    for (let claim = claims.pop(); claim; claim = claims.pop()) await send(agent, claim);
  };
  const startedAt = performance.now();
  await Promise.all(Array.from({ length: concurrency }, work));
  agent.destroy();
  return (performance.now() - startedAt) / CLAIMS_A_ROUND;
}

/** One claim's statements, after a few that warm everything up. */
async function recordClaim() {
  const agent = new Agent({ keepAlive: true });
  for (let times = 0; times < 20; times += 1) await sendToApi(agent, freshClaim());
  const claim = freshClaim();
  const statements = await recordStatements(async () => {
    await sendToApi(agent, claim);
  });
  agent.destroy();
  return { claim, statements };
}

try {
  const { claim, statements } = await recordClaim();
  const bare = await openBareDoor(bench, statements, claim);
  const sendToBare: Send = (agent, each) => postJson(agent, bare.url, bench.cookie, each);
  console.log(
    `A claim over HTTP: one request, one job taken that nobody has, keep-alive, pool of ${POOL_SIZE}, every commit synced to disk.`,
  );
  console.log(
    `Beside it: a bare Fastify route that sends the same ${statements.length} statements in the same transaction through pg,`,
  );
  console.log(
    `those of the session first, but without signed cookies, checks, rules or answers in words. Median of ${ROUNDS} rounds of ${CLAIMS_A_ROUND}.`,
  );
  for (const concurrency of CONCURRENCIES) {
    const api: number[] = [];
    const plain: number[] = [];
    for (let round = 0; round <= ROUNDS; round += 1) {
      const times = [
        await millisecondsAClaim(sendToApi, concurrency),
        await millisecondsAClaim(sendToBare, concurrency),
      ] as const;
      if (round === 0) continue; // the first warms both up
      api.push(times[0]);
      plain.push(times[1]);
    }
    const [ours, theirs] = [medianOf(api), medianOf(plain)];
    console.log(
      `  ${String(concurrency).padStart(2)} at a time: API ${ours.toFixed(2)} ms a claim, bare ${theirs.toFixed(2)} ms; ratio ${(ours / theirs).toFixed(2)}`,
    );
  }
  if (process.argv.includes('--statements')) {
    for (const { login, text } of statements) console.log(`${login}: ${text.replaceAll(/\s+/g, ' ')}`);
  }
  await bare.close();
} finally {
  await bench.close();
}
