import { setImmediate as pause } from 'node:timers/promises';
import { parentPort } from 'node:worker_threads';
import { proposeVisit, type VisitQuestion } from '@halfshaft/bayplan';
import type { FromThread, ToThread } from './plan-messages';

/** The thread that plans. Whenever the planning pauses it hears whether anyone still waits. */
const dropped = new Set<number>();

parentPort?.on('message', async (message: ToThread) => {
  if (message.kind === 'drop') dropped.add(message.number);
  else answer(await plan(message.number, message.question));
});

async function plan(number: number, question: VisitQuestion): Promise<FromThread> {
  try {
    const planning = proposeVisit(question);
    for (;;) {
      const step = planning.next();
      if (step.done) return { kind: 'proposed', number, proposal: step.value };
      await pause();
      if (dropped.delete(number)) return { kind: 'dropped', number };
    }
  } catch (error) {
    return { kind: 'failed', number, message: String(error) };
  }
}

function answer(message: FromThread): void {
  dropped.delete(message.number);
  parentPort?.postMessage(message);
}
