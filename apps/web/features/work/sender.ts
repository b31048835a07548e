import { MOST_ACTIONS, type Problem, type PushResult } from '@halfshaft/contract';
import type { PushedAction } from '@halfshaft/worklog';
import { Backoff } from './backoff';
import type { Outbox } from './outbox';
import type { SendTurn } from './send-turn';
import type { WorkClient } from './work-client';

/** When another tab has the turn, how soon to look again. */
const OTHER_TAB_MILLIS = 2000;

export interface SenderParts {
  push: WorkClient['push'];
  outbox: Outbox;
  turn: SendTurn;
  /** Called after the outbox has let go of the answered actions. */
  onAnswers: (results: PushResult[], actions: readonly PushedAction[]) => void;
  /** Null when sending goes well again. */
  onTrouble: (trouble: { problem: Problem; lost: boolean } | null) => void;
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

  /** There is something to send, or a network again. */
  kick(): void {
    if (this.busy || this.held) return;
    this.busy = true;
    this.run().finally(() => {
      this.busy = false;
      // Something may have been added after the last look into the outbox.
      if (this.wanted) {
        this.wanted = false;
        this.kick();
      }
    });
  }
  private wanted = false;

  resume(): void {
    this.held = false;
    this.backoff.reset();
    this.kick();
  }

  stop(): void {
    this.held = true;
    this.backoff.reset();
    clearTimeout(this.otherTab);
    this.parts.turn.give();
  }

  private async run(): Promise<void> {
    const { outbox, turn } = this.parts;
    while (outbox.list().length > 0) {
      if (!turn.take()) {
        clearTimeout(this.otherTab);
        this.otherTab = setTimeout(() => this.lookAgain(), OTHER_TAB_MILLIS);
        return;
      }
      if (!(await this.sendBatch(outbox.list().slice(0, this.batchSize)))) break;
    }
    turn.give();
  }
}
