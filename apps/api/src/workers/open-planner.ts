import { Worker } from 'node:worker_threads';
import type { VisitProposal, VisitQuestion } from '@halfshaft/bayplan';
import { AppError } from '../errors';
import type { Planner } from '../features/bay-plan/service';
import type { FromThread, ToThread } from './plan-messages';

export interface OpenPlanner extends Planner {
  /** Whoever still waits is told that nothing comes. */
  close(): Promise<void>;
}

interface Job {
  key: string;
  /** The question as text: who asks the same of the same service waits for the same answer. */
  text: string;
  question: VisitQuestion;
  number: number;
  waiters: Set<Waiter>;
}

interface Waiter {
  resolve(proposal: VisitProposal): void;
  reject(error: Error): void;
}

const MOST_WAITING = 16;
const TOO_MANY = 'Many plans are being made just now. Try again in a minute.';

/**
 * One thread beside the server, started with the first question, plans one service after the other in the order asked.
 *
 * @param mostWaiting so many questions may wait; the next one is refused
 */
export function openPlanner({ mostWaiting = MOST_WAITING }: { mostWaiting?: number } = {}): OpenPlanner {
  const waiting: Job[] = [];
  let running: Job | null = null;
  let thread: Worker | null = null;
  let lastNumber = 0;

  function openThread(): Worker {
    const opened = new Worker(new URL('./plan-thread.mjs', import.meta.url), { execArgv: [] });
    opened.on('message', (message: FromThread) => finish(message));
    opened.on('error', (error) => lose(opened, error));
    opened.on('exit', () => lose(opened, new Error('The planning thread ended.')));
    return opened;
  }

  function finish(message: FromThread): void {
    if (message.number !== running?.number) return;
    const { waiters } = running;
    if (message.kind === 'proposed') for (const { resolve } of waiters) resolve(message.proposal);
    if (message.kind === 'failed') for (const { reject } of waiters) reject(new Error(message.message));
    running = null;
    startNext();
  }

  /** What it was planning is lost with it; the next question starts another. */
  function lose(lost: Worker, error: Error): void {
    if (thread !== lost) return;
    thread = null;
    for (const { reject } of running?.waiters ?? []) reject(error);
    running = null;
    startNext();
  }

  function startNext(): void {
    if (running) return;
    running = waiting.shift() ?? null;
    // An idle thread keeps no process alive.
    if (!running) return void thread?.unref();
    thread ??= openThread();
    thread.ref();
    send({ kind: 'plan', number: running.number, question: running.question });
  }

  function send(message: ToThread): void {
    thread?.postMessage(message);
  }

  function leave(job: Job, waiter: Waiter): void {
    if (!job.waiters.delete(waiter)) return;
    waiter.reject(new AppError('conflict', 'Nobody waits for this plan any more.'));
    if (job.waiters.size > 0) return;
    if (job === running) send({ kind: 'drop', number: job.number });
    else waiting.splice(waiting.indexOf(job), 1);
  }

  function jobFor(key: string, question: VisitQuestion): Job {
    const text = JSON.stringify(question);
    const same = [...(running ? [running] : []), ...waiting].find(
      (job) => job.key === key && job.text === text && job.waiters.size > 0,
    );
    if (same) return same;
    if (waiting.length >= mostWaiting) throw new AppError('conflict', TOO_MANY);
    lastNumber += 1;
    const job = { key, text, question, number: lastNumber, waiters: new Set<Waiter>() };
    waiting.push(job);
    return job;
  }

  return {
    propose: (key, question, signal) =>
      new Promise((resolve, reject) => {
        signal?.throwIfAborted();
        const job = jobFor(key, question);
        const waiter = { resolve, reject };
        job.waiters.add(waiter);
        signal?.addEventListener('abort', () => leave(job, waiter), { once: true });
        startNext();
      }),
    async close() {
      const jobs = [...(running ? [running] : []), ...waiting.splice(0)];
      for (const { reject } of jobs.flatMap(({ waiters }) => [...waiters])) {
        reject(new AppError('conflict', 'The server stops. Try again in a minute.'));
      }
      running = null;
      const ending = thread;
      thread = null;
      await ending?.terminate();
    },
  };
}
