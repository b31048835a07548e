import { pushedAction } from '@halfshaft/contract';
import type { ActionId, PushedAction } from '@halfshaft/worklog';
import type { KeptStorage } from './kept-storage';

/** How many answered ids are remembered; a tab that missed more than these only sends something twice. */
const ANSWERED_KEPT = 200;

interface Kept {
  actions: PushedAction[];
  answered: ActionId[];
}

/**
 * Actions the server has not answered yet, kept on the device and shared by all tabs. Two tabs may overwrite each
 * other's list in the same instant, so each remembers what it added and puts it back until it reads that it was
 * answered: at worst something is sent twice, which the server knows how to take.
 */
export class Outbox {
  private readonly own = new Map<ActionId, PushedAction>();
  private kept: Kept = { actions: [], answered: [] };
  /** False when the browser refused to store: the entries then live only as long as the page. */
  isKept = true;

  constructor(
    private readonly storage: KeptStorage,
    private readonly key: string,
  ) {
    this.refresh();
  }

  /** In the order of the device. */
  list(): readonly PushedAction[] {
    return this.kept.actions;
  }

  add(action: PushedAction): void {
    this.own.set(action.actionId, action);
    this.refresh();
  }

  /** Answered, one way or the other: nothing more to send. */
  settle(ids: readonly ActionId[]): void {
    this.refresh();
    for (const id of ids) this.own.delete(id);
    const answered = [...this.kept.answered.filter((id) => !ids.includes(id)), ...ids];
    this.save({
      actions: this.kept.actions.filter((action) => !ids.includes(action.actionId)),
      answered: answered.slice(-ANSWERED_KEPT),
    });
  }

  /** Reads what other tabs did. */
  refresh(): void {
    const stored = this.isKept ? readKept(this.storage.read(this.key)) : this.kept;
    for (const id of stored.answered) this.own.delete(id);
    const missing = [...this.own.values()].filter(
      (action) => !stored.actions.some((known) => known.actionId === action.actionId),
    );
    this.kept = { ...stored, actions: inOrder([...stored.actions, ...missing]) };
    if (missing.length > 0) this.save(this.kept);
  }

  private save(kept: Kept): void {
    this.kept = kept;
    this.isKept = this.storage.write(this.key, kept);
  }
}

function inOrder(actions: PushedAction[]): PushedAction[] {
  return actions.sort((one, other) => one.deviceSeq - other.deviceSeq);
}

/** What is not an action any more (an older app, a hand in the storage) could not be sent either. */
function readKept(stored: unknown): Kept {
  const { actions, answered } = (
    typeof stored === 'object' && stored !== null ? stored : {}
  ) as Partial<Kept>;
  return {
    actions: Array.isArray(actions) ? actions.filter((each) => pushedAction.safeParse(each).success) : [],
    answered: Array.isArray(answered) ? answered.filter((id) => typeof id === 'string') : [],
  };
}
