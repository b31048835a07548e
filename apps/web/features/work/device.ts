import type { KeptStorage } from './kept-storage';

const KEY = 'work.device';

interface KnownDevice {
  deviceId: string;
  lastSeq: number;
}

/** This browser as the log knows it: an id made once, and a number for each action, counted up for ever. */
export class Device {
  /** Where the browser keeps nothing, the device is a new one at each reload. */
  private known: KnownDevice | null = null;

  constructor(
    private readonly storage: KeptStorage,
    private readonly newId: () => string,
  ) {}

  get id(): string {
    return this.load().deviceId;
  }

  nextSeq(): number {
    const { deviceId, lastSeq } = this.load();
    this.save({ deviceId, lastSeq: lastSeq + 1 });
    return lastSeq + 1;
  }

  /** Read again each time: another tab may have counted on. */
  private load(): KnownDevice {
    const stored = this.storage.read(KEY);
    if (isKnownDevice(stored) && stored.lastSeq >= (this.known?.lastSeq ?? 0)) return stored;
    return this.known ?? this.save({ deviceId: this.newId(), lastSeq: 0 });
  }

  private save(device: KnownDevice): KnownDevice {
    this.known = device;
    this.storage.write(KEY, device);
    return device;
  }
}

function isKnownDevice(stored: unknown): stored is KnownDevice {
  if (typeof stored !== 'object' || stored === null) return false;
  const { deviceId, lastSeq } = stored as Partial<KnownDevice>;
  return typeof deviceId === 'string' && deviceId !== '' && Number.isSafeInteger(lastSeq);
}
