import pg from 'pg';

export interface Statement {
  /** Whether it went to the sign-in login's pool or the app's. */
  login: string;
  text: string;
  values: unknown[];
}

type Query = (this: pg.Client, ...given: unknown[]) => unknown;

/** Every statement this process sends to the database while `work` runs, in the order of sending. */
export async function recordStatements(work: () => Promise<void>): Promise<Statement[]> {
  const recorded: Statement[] = [];
  const prototype = pg.Client.prototype as unknown as { query: Query };
  const original = prototype.query;
  prototype.query = function (...given) {
    const [first, second] = given;
    const asked =
      typeof first === 'string' ? { text: first } : (first as { text?: string; values?: unknown[] });
    const values = asked.values ?? (Array.isArray(second) ? second : []);
    if (asked.text) recorded.push({ login: this.user ?? '', text: asked.text, values });
    return original.apply(this, given);
  };
  try {
    await work();
  } finally {
    prototype.query = original;
  }
  return recorded;
}
