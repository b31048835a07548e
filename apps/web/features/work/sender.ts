import { MOST_ACTIONS, type Problem, type PushResult } from '@halfshaft/contract';
import type { PushedAction } from '@halfshaft/worklog';
import { Backoff } from './backoff';
import type { Outbox } from './outbox';
import type { SendTurn } from './send-turn';
import type { WorkClient } from './work-client';

/** When another tab has the turn, how soon to look again. */
const OTHER_TAB_MILLIS = 2000;

export interface Trouble {
  problem: Problem;
  /** The server was not reached. */
  lost: boolean;
}

export interface SenderParts {
  push: WorkClient['push'];
  outbox: Outbox;
  turn: SendTurn;
  /** Called after the outbox has let go of the answered actions. */
  onAnswers: (results: readonly PushResult[], actions: readonly PushedAction[]) => void;
  /** Null when sending goes well again. */
  onTrouble: (trouble: Trouble | null) => void;
}

/** Sends the outbox in the order of the device, one request at a time, until it is empty. */
export class Sender {
  private busy = false;
  /** Stopped until a person does something about it (signs in): trying again would get the same answer. */
  private held = false;
  /** One at a time after a request the server could not read, so that one bad action does not hold up the rest. */
  private batchSize = MOST_ACTIONS;
  private readonly backoff = new Backoff();
  private otherTab: ReturnType<typeof setTimeout> | undefined;

  constructor(private readonly parts: SenderParts) {}

  /** There is something to send. */
  kick(): void {
    if (!this.busy && !this.held) void this.run();
  }

  /** A network is back, or a person signed in or asked: at once instead of after the pause. */
  resume(): void {
    this.held = false;
    this.backoff.reset();
    this.kick();
  }

  /** A request under way is still heard. */
  stop(): void {
    this.held = true;
    this.backoff.reset();
    clearTimeout(this.otherTab);
    this.parts.turn.give();
  }

  private async run(): Promise<void> {
    const { outbox, turn } = this.parts;
    this.busy = true;
    try {
      while (!this.held && outbox.list().length > 0) {
        if (!turn.take()) return this.waitForOtherTab();
        const goOn = await this.sendBatch(outbox.list().slice(0, this.batchSize));
        if (!goOn) break;
      }
      turn.give();
    } finally {
      this.busy = false;
    }
  }

  private waitForOtherTab(): void {
    clearTimeout(this.otherTab);
    this.otherTab = setTimeout(() => {
      this.parts.outbox.refresh();
      this.kick();
    }, OTHER_TAB_MILLIS);
  }

  /** True when the next batch may follow at once. */
  private async sendBatch(batch: readonly PushedAction[]): Promise<boolean> {
    const answer = await this.parts.push(batch);
    if (answer.ok && answer.value.results.length > 0) {
      this.backoff.reset();
      this.parts.onTrouble(null);
      this.settle(answer.value.results, batch);
      return true;
    }
    return this.afterTrouble(answer.ok ? NO_ANSWERS : answer, batch);
  }

  private afterTrouble(trouble: Trouble, batch: readonly PushedAction[]): boolean {
    const { code } = trouble.problem;
    if (code === 'badInput') return this.refuseUnreadable(trouble.problem, batch);
    this.parts.onTrouble(trouble);
    if (code === 'signInNeeded' || code === 'unknown' || code === 'notAllowed') this.held = true;
    else this.backoff.again(() => this.kick());
    return false;
  }

  private refuseUnreadable(problem: Problem, batch: readonly PushedAction[]): boolean {
    this.batchSize = 1;
    const [only] = batch;
    if (only && batch.length === 1) this.settle([unreadable(only, problem)], batch);
    return true;
  }

  private settle(results: readonly PushResult[], batch: readonly PushedAction[]): void {
    this.parts.outbox.settle(results.map((result) => result.actionId));
    this.parts.onAnswers(results, batch);
  }
}

const NO_ANSWERS: Trouble = {
  problem: { code: 'unexpected', message: 'The server gave no answer. It is asked again.', fields: [] },
  lost: false,
};

function unreadable(action: PushedAction, problem: Problem): PushResult {
  const { actionId } = action;
  const bare = { code: 'malformed', personId: null, repeated: false, seqs: [] };
  return { actionId, status: 'refused', sentence: problem.message, ...bare };
}
