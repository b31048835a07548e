import { type PushResult, pushedAction } from '@halfshaft/contract';
import type { ActionId, PushedAction } from '@halfshaft/worklog';
import type { KeptStorage } from './kept-storage';

/** More than these nobody reads. */
const MOST_NOTICES = 20;

/** What an author must be told of an action: it was not taken, or it was kept with something standing against it. */
export interface WorkNotice {
  action: PushedAction;
  kind: 'refused' | 'kept';
  sentence: string;
}

/** Notices stay until they are dismissed, also through a reload. */
export class NoticeBoard {
  /** For browsers that keep nothing. */
  private notices: WorkNotice[];

  constructor(
    private readonly storage: KeptStorage,
    private readonly key: string,
  ) {
    this.notices = readNotices(storage.read(key));
  }

  list(): readonly WorkNotice[] {
    return this.notices;
  }

  add(notice: WorkNotice): void {
    this.refresh();
    const others = this.notices.filter((known) => known.action.actionId !== notice.action.actionId);
    this.save([...others, notice].slice(-MOST_NOTICES));
  }

  /** An accepted action without flags needs no notice. */
  addAnswer({ status, sentence }: PushResult, action: PushedAction): void {
    if (status === 'refused') this.add({ action, kind: 'refused', sentence });
    else if (sentence !== PLAINLY_KEPT) this.add({ action, kind: 'kept', sentence });
  }

  dismiss(actionId: ActionId): void {
    this.refresh();
    this.save(this.notices.filter((notice) => notice.action.actionId !== actionId));
  }

  /** Reads what other tabs did. */
  refresh(): void {
    const stored = this.storage.read(this.key);
    if (stored !== null) this.notices = readNotices(stored);
  }

  private save(notices: WorkNotice[]): void {
    this.notices = notices;
    this.storage.write(this.key, notices);
  }
}

/** The server's word for an accepted action against which nothing stands. */
const PLAINLY_KEPT = 'Kept.';

function readNotices(stored: unknown): WorkNotice[] {
  return Array.isArray(stored) ? stored.filter(isNotice) : [];
}

function isNotice(stored: unknown): stored is WorkNotice {
  if (typeof stored !== 'object' || stored === null) return false;
  const { action, sentence } = stored as Partial<WorkNotice>;
  return typeof sentence === 'string' && pushedAction.safeParse(action).success;
}
