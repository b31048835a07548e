import type { FactId } from '@halfshaft/worklog';
import { Backoff } from '../work/backoff';
import type { Place } from '../work/waiting-action';
import type { KeptPhoto, PhotoBox } from './kept-photo';
import type { Sent } from './send-picture';

/** What the log says of a photo: it may be sent, must wait (its entry is not there yet), or was taken back. */
export type Standing = 'send' | 'wait' | 'gone';

export interface PhotoQueueParts {
  box: PhotoBox;
  place: Place;
  send(photoId: FactId, file: Uint8Array<ArrayBuffer>): Promise<Sent>;
  standingOf(photo: KeptPhoto): Standing;
}

/** The pictures of one event that are on this phone: kept, shown from here, sent one after the other behind their entries. */
export class PhotoQueue {
  private readonly listeners = new Set<() => void>();
  private readonly backoff = new Backoff();
  /** Not taken by the phone's database: they live as long as the page. */
  private readonly loose = new Map<FactId, KeptPhoto>();
  private photos: readonly KeptPhoto[] = [];
  private busy = false;
  /** Until somebody signs in, or asks. */
  private held = false;
  /** Asked while busy: the request under way may have begun before there was a reason to try again. */
  private resumesAgain = false;
  private forget: (() => void) | null = null;

  constructor(private readonly parts: PhotoQueueParts) {}

  readonly subscribe = (listener: () => void): (() => void) => {
    this.listeners.add(listener);
    return () => this.listeners.delete(listener);
  };

  readonly getPhotos = (): readonly KeptPhoto[] => this.photos;

  start(): void {
    this.held = false;
    this.forget ??= this.parts.box.hear(() => void this.read());
    void this.read().then(() => this.kick());
  }

  stop(): void {
    this.held = true;
    this.resumesAgain = false;
    this.backoff.reset();
    this.forget?.();
    this.forget = null;
  }

  /** True once the picture survives the page. */
  async add(photo: KeptPhoto): Promise<boolean> {
    try {
      await this.parts.box.keep(photo);
      this.loose.delete(photo.photoId);
      await this.read();
      return true;
    } catch {
      this.loose.set(photo.photoId, photo);
      this.show(this.photos);
      return false;
    }
  }

  async drop(photo: KeptPhoto): Promise<void> {
    this.loose.delete(photo.photoId);
    this.show(this.photos.filter((each) => each.photoId !== photo.photoId));
    await this.parts.box.drop(photo).catch(() => undefined); // sent again after a reload, which does no harm
  }

  /** A person asked: what was refused is tried once more. */
  async sendAgain(photo: KeptPhoto): Promise<void> {
    await this.add({ ...photo, refused: null });
    this.resume();
  }

  /** A network is back, or somebody signed in. */
  resume(): void {
    this.held = false;
    this.backoff.reset();
    this.resumesAgain = this.busy;
    this.kick();
  }

  /** The log has grown, or there is something new to send. */
  kick(): void {
    if (!this.busy && !this.held && this.next()) void this.run();
  }

  private async run(): Promise<void> {
    this.busy = true;
    let goesOn = true;
    for (let photo = this.next(); photo && goesOn && !this.held; photo = this.next()) {
      if (this.parts.standingOf(photo) === 'gone') await this.drop(photo);
      else goesOn = await this.sendOne(photo);
    }
    this.busy = false;
    if (this.resumesAgain) this.resume();
  }

  private next(): KeptPhoto | undefined {
    return this.photos.find((photo) => photo.refused === null && this.parts.standingOf(photo) !== 'wait');
  }

  /** True when the next one may follow at once. */
  private async sendOne(photo: KeptPhoto): Promise<boolean> {
    const sent = await this.parts.send(photo.photoId, photo.file);
    if (sent.ok) await this.drop(photo);
    else if (sent.why === 'refused') await this.add({ ...photo, refused: sent.sentence });
    else if (sent.why === 'signInNeeded') this.held = true;
    else this.backoff.again(() => this.kick());
    if (sent.ok) this.backoff.reset();
    return sent.ok || sent.why === 'refused';
  }

  private async read(): Promise<void> {
    const kept = await this.parts.box.read(this.parts.place).catch(() => null);
    if (kept) this.show(kept);
  }

  private show(kept: readonly KeptPhoto[]): void {
    const stored = kept.filter(({ photoId }) => !this.loose.has(photoId));
    this.photos = [...stored, ...this.loose.values()].sort((one, other) => one.takenAt - other.takenAt);
    for (const listener of this.listeners) listener();
  }
}
