import { MOST_ACTIONS, type Problem, type PushResult } from '@halfshaft/contract';
import type { PersonId, PushedAction } from '@halfshaft/worklog';
import { Backoff } from './backoff';
import type { TakeTurn } from './take-turn';
import type { Place } from './waiting-action';
import type { WorkClient } from './work-client';

export interface Trouble {
  problem: Problem;
  /** The server was not reached. */
  lost: boolean;
}

/** What one person has to send, oldest first. */
export interface ToSend {
  owner: PersonId;
  actions: readonly PushedAction[];
}

export interface SenderParts {
  place: Place;
  push: WorkClient['push'];
  takeTurn: TakeTurn;
  /** Reads what other tabs did; asked at the beginning of each turn. */
  refresh: () => Promise<void>;
  /** Null when nothing waits that may be sent under this sign-in. `heldFor`: whose the server has not taken under it. */
  next: (heldFor: ReadonlySet<PersonId>) => ToSend | null;
  /** Resolves when the answered actions are no longer in what waits. */
  onAnswers: (results: readonly PushResult[], actions: readonly PushedAction[]) => Promise<void>;
  /** Null when sending goes well again; else with whose it was. */
  onTrouble: (trouble: Trouble | null, owner: PersonId) => void;
}

/** Sends what waits in the order of the device, one request at a time, until nothing is left. */
export class Sender {
  private busy = false;
  /** Stopped until a person does something about it (signs in): trying again would get the same answer. */
  private held = false;
  /** Whose are not taken, since somebody else is signed in; other people's are sent all the same. */
  private readonly heldFor = new Set<PersonId>();
  /** One at a time after a request the server could not read, so that one bad action does not hold up the rest. */
  private batchSize = MOST_ACTIONS;
  private readonly backoff = new Backoff();
  /** Asked while busy: what is under way may have begun before the reason to try again, and end as if there were none. */
  private resumesAgain = false;
  private waitingForTurn = new AbortController();

  constructor(private readonly parts: SenderParts) {}

  /** There is something to send. */
  kick(): void {
    if (!this.busy && !this.held && this.nextAllowed()) void this.run();
  }

  /** A network is back, or a person signed in or asked: at once instead of after the pause. */
  resume(): void {
    this.held = false;
    this.heldFor.clear();
    this.backoff.reset();
    this.resumesAgain = this.busy;
    this.kick();
  }

  /** A request under way is still heard. */
  stop(): void {
    this.held = true;
    this.resumesAgain = false;
    this.backoff.reset();
    this.waitingForTurn.abort();
    this.waitingForTurn = new AbortController();
  }

  private nextAllowed(): ToSend | null {
    const next = this.parts.next(this.heldFor);
    return next && !this.heldFor.has(next.owner) ? next : null;
  }

  private async run(): Promise<void> {
    this.busy = true;
    const { place, takeTurn } = this.parts;
    let goesOn = true;
    const send = async (turn: { holds(): Promise<boolean> }) => {
      await this.parts.refresh();
      while (goesOn && !this.held && (await turn.holds())) {
        const next = this.nextAllowed();
        if (!next) return;
        goesOn = await this.sendBatch(next.actions.slice(0, this.batchSize), next.owner);
      }
    };
    try {
      await takeTurn(place, send, this.waitingForTurn.signal);
    } catch {
      // The storage that keeps the turn failed: what waits is tried again like after a lost connection.
      goesOn = false;
      this.backoff.again(() => this.kick());
    } finally {
      this.busy = false;
    }
    if (this.resumesAgain) this.resume();
    // Made while the last answer was being put away.
    else if (goesOn) this.kick();
  }

  /** True when the next batch may follow at once. */
  private async sendBatch(batch: readonly PushedAction[], owner: PersonId): Promise<boolean> {
    const answer = await this.parts.push(batch, owner);
    if (answer.ok && answer.value.results.length > 0) {
      this.backoff.reset();
      this.parts.onTrouble(null, owner);
      await this.parts.onAnswers(answer.value.results, batch);
      return true;
    }
    return this.afterTrouble(answer.ok ? NO_ANSWERS : answer, batch, owner);
  }

  private async afterTrouble(
    trouble: Trouble,
    batch: readonly PushedAction[],
    owner: PersonId,
  ): Promise<boolean> {
    const { code } = trouble.problem;
    if (code === 'badInput') return this.refuseUnreadable(trouble.problem, batch);
    // Set before it is told: whoever hears of it may want to send at once.
    if (code === 'signInNeeded' || code === 'unknown') this.held = true;
    else if (code === 'notAllowed') this.heldFor.add(owner);
    else this.backoff.again(() => this.kick());
    this.parts.onTrouble(trouble, owner);
    return code === 'notAllowed';
  }

  private async refuseUnreadable(problem: Problem, batch: readonly PushedAction[]): Promise<boolean> {
    this.batchSize = 1;
    const [only] = batch;
    if (only && batch.length === 1) await this.parts.onAnswers([unreadable(only, problem)], batch);
    return true;
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
