import type { Problem } from '@halfshaft/contract';

/** One request through the front door, as a browser sends it. */
export interface Request {
  path: string;
  method?: string;
  cookie?: string;
  /** Sent as JSON, unless `text` is given. */
  body?: unknown;
  text?: string;
}

export interface Told {
  status: number;
  /** What a procedure gave back, when it went well. */
  data: unknown;
  /** What a screen shows, when it did not. */
  problem: Problem | null;
  text: string;
}

export async function askDoor(url: string, request: Request): Promise<Told> {
  const { path, method = 'POST', cookie = '', body, text } = request;
  const sent = text ?? (body === undefined ? null : JSON.stringify(body));
  const answer = await fetch(`${url}${path}`, {
    method,
    headers: { cookie, ...(sent === null ? {} : { 'content-type': 'application/json' }) },
    body: sent,
  });
  const told = await answer.text();
  const parsed = parse(told);
  return {
    status: answer.status,
    data: parsed?.result?.data ?? null,
    problem: parsed?.error?.data?.problem ?? null,
    text: told,
  };
}

interface Envelope {
  result?: { data?: unknown };
  error?: { data?: { problem?: Problem } };
}

function parse(text: string): Envelope | null {
  try {
    return JSON.parse(text) as Envelope;
  } catch {
    return null; // no JSON: the test looks at the text
  }
}
