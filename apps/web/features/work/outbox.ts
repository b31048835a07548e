import type { ActionId, PersonId } from '@halfshaft/worklog';
import type { BoxChange, OutboxBox, ToldNotice } from './outbox-box';
import type { Place, Settled, WaitingAction, WorkNotice } from './waiting-action';

/** A write that has not come back by then is told as not kept; should it still come back, that is told too. */
const MOST_WRITE_MILLIS = 3000;

export interface OutboxParts {
  box: OutboxBox;
  place: Place;
  newId: () => string;
  /** Something that is shown has changed. */
  onChange: () => void;
}

/**
 * What waits at one place, as this tab sees it: what the box holds, and what the box would not take. An action is shown
 * and sent only after the box has kept it or has said that it cannot.
 */
export class Outbox {
  deviceId: string;
  private lastSeq = 0;
  private kept = new Map<ActionId, WaitingAction>();
  /** Refused by the box: they live only as long as the page, and are offered to the box again. */
  private readonly loose = new Map<ActionId, WaitingAction>();
  /** On their way into the box. */
  private readonly entering = new Map<ActionId, WaitingAction>();
  /** Answered, though the box may not have let go of them yet. */
  private readonly gone = new Set<ActionId>();
  private notices = new Map<string, WorkNotice>();
  private inOrder: readonly WaitingAction[] | null = null;

  constructor(private readonly parts: OutboxParts) {
    this.deviceId = parts.newId();
  }

  /** Who this device is and what waits here. Where the box does not open in time, the page goes on without it. */
  async open(): Promise<void> {
    const reading = this.readDevice().then(() => this.read());
    try {
      await inTime(reading);
    } catch {
      reading.then(() => this.changed()).catch(() => undefined);
    }
  }

  /** All that waits here in the order of the device, of every person. */
  list(): readonly WaitingAction[] {
    this.inOrder ??= [...this.kept.values(), ...this.loose.values()].sort(
      (one, other) => one.action.deviceSeq - other.action.deviceSeq,
    );
    return this.inOrder;
  }

  listOf(owner: PersonId): readonly WaitingAction[] {
    const all = this.list();
    return all.every((each) => each.owner === owner) ? all : all.filter((each) => each.owner === owner);
  }

  /** Tapped, but neither kept nor refused yet: to be reckoned with, not to be shown. */
  listEntering(): readonly WaitingAction[] {
    return [...this.entering.values()];
  }

  /** How many only this page knows. */
  get looseCount(): number {
    return this.loose.size;
  }

  noticesOf(owner: PersonId): readonly WorkNotice[] {
    return [...this.notices.values()].filter((notice) => notice.owner === owner);
  }

  /** For the next action; another tab may make it a later one. */
  nextSeq(): number {
    this.lastSeq += 1;
    return this.lastSeq;
  }

  /** Resolves once the action may be shown: kept, or known not to be. */
  async add(waiting: WaitingAction): Promise<void> {
    const id = waiting.action.actionId;
    this.entering.set(id, waiting);
    const writing = this.parts.box.keep(waiting, false);
    try {
      this.takeIn(await inTime(writing));
      if (this.loose.size > 0) void this.keepLoose();
    } catch {
      this.loose.set(id, waiting);
      writing.then((kept) => this.keptLate(kept, waiting)).catch(() => undefined);
    }
    this.entering.delete(id);
    this.changed();
  }

  /** Offers the box once more what it would not take. */
  async keepLoose(): Promise<void> {
    for (const waiting of [...this.loose.values()]) {
      try {
        await this.keepFixed(waiting);
      } catch {
        return; // still no room: the next try comes with the next answer or action
      }
    }
  }

  /** Answered, one way or the other: nothing more to send. */
  async settle(settled: Settled): Promise<void> {
    for (const id of settled.ids) this.letGo(id);
    for (const notice of settled.notices) this.notices.set(notice.id, notice);
    this.changed();
    // Still in the box, they are sent again after a reload, which the server answers as before.
    await this.parts.box.settle(this.parts.place, settled).catch(() => undefined);
  }

  async addNotice(notice: WorkNotice): Promise<void> {
    await this.settle({ ids: [], notices: [notice] });
  }

  /** What others did, once for each person on this device. */
  async tell(owner: PersonId, seq: number, notices: readonly ToldNotice[]): Promise<void> {
    try {
      await this.parts.box.tell(this.parts.place, owner, seq, notices);
      if (notices.length > 0) await this.read();
    } catch {
      for (const { notice } of notices) this.notices.set(notice.id, notice);
    }
    if (notices.length > 0) this.changed();
  }

  async dismiss(noticeId: string): Promise<void> {
    this.notices.delete(noticeId);
    this.changed();
    await this.parts.box.dismiss(this.parts.place, noticeId).catch(() => undefined);
  }

  /** Reads what other tabs did. */
  async refresh(): Promise<void> {
    try {
      await this.readDevice();
      await this.read();
      this.changed();
    } catch {
      // What this tab knows stays as it is; it is shown as kept only where it was kept.
    }
  }

  /** Another tab told what it did. */
  hear({ place, added, settled = [], noticed = false }: BoxChange): void {
    if (place !== this.parts.place) return;
    if (added) this.takeIn(added);
    for (const id of settled) this.letGo(id);
    if (noticed) void this.refresh();
    this.changed();
  }

  private async readDevice(): Promise<void> {
    const device = await this.parts.box.device();
    this.deviceId = device.deviceId;
    this.lastSeq = Math.max(this.lastSeq, device.lastSeq);
  }

  private async read(): Promise<void> {
    const { box, place } = this.parts;
    const { ids, fresh, notices } = await box.read(place, (id) => this.kept.has(id) || this.gone.has(id));
    const found = new Map(fresh.map((each) => [each.action.actionId, each]));
    const still = ids.flatMap((id) => {
      const waiting = this.gone.has(id) ? undefined : (this.kept.get(id) ?? found.get(id));
      return waiting ? [[id, waiting] as const] : [];
    });
    this.kept = new Map(still);
    this.notices = new Map(notices.map((notice) => [notice.id, notice]));
    this.inOrder = null;
  }

  private takeIn(kept: WaitingAction): void {
    const { actionId, deviceSeq } = kept.action;
    this.lastSeq = Math.max(this.lastSeq, deviceSeq);
    if (this.gone.has(actionId)) return;
    this.kept.set(actionId, kept);
    this.loose.delete(actionId);
  }

  private letGo(id: ActionId): void {
    this.gone.add(id);
    this.kept.delete(id);
    this.loose.delete(id);
    this.inOrder = null;
  }

  private async keepFixed(waiting: WaitingAction): Promise<void> {
    const kept = await this.parts.box.keep(waiting, true);
    if (this.gone.has(waiting.action.actionId)) {
      await this.parts.box.settle(this.parts.place, { ids: [waiting.action.actionId], notices: [] });
      return;
    }
    this.takeIn(kept);
    this.changed();
  }

  /** It may have been sent under the number it had here, so it is kept under that one. */
  private async keptLate(kept: WaitingAction, sent: WaitingAction): Promise<void> {
    this.lastSeq = Math.max(this.lastSeq, kept.action.deviceSeq);
    await this.keepFixed(sent);
  }

  private changed(): void {
    this.inOrder = null;
    this.parts.onChange();
  }
}

/** Rejects when a write or a look takes longer than anybody waits for a tap. */
function inTime<T>(promise: Promise<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => reject(new Error('The storage did not answer.')), MOST_WRITE_MILLIS);
    promise.then(resolve, reject).finally(() => clearTimeout(timer));
  });
}
