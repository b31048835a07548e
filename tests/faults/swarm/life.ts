import type { Traffic } from './traffic';

const NEVER = new Promise<never>(() => undefined);

/** Of a tab. One that crashed begins nothing more, and never hears how what it had begun went on without it. */
export class Life {
  private isOver = false;
  private end: () => void = () => undefined;
  readonly ended = new Promise<void>((resolve) => {
    this.end = resolve;
  });

  constructor(private readonly traffic: Traffic) {}

  crash(): void {
    this.isOver = true;
    this.end();
  }

  /** The same parts, but only as long as the tab lives. */
  bind<Parts extends object>(parts: Parts): Parts {
    return new Proxy(parts, {
      get: (target, name) => {
        const part: unknown = Reflect.get(target, name);
        return typeof part === 'function' ? (...given: unknown[]) => this.run(() => part(...given)) : part;
      },
    });
  }

  private run(work: () => unknown): unknown {
    if (this.isOver) return NEVER;
    const begun = work();
    if (!(begun instanceof Promise)) return begun;
    return this.traffic.during(begun).then(
      (value) => (this.isOver ? NEVER : value),
      (error: unknown) => (this.isOver ? NEVER : Promise.reject(error)),
    );
  }
}
