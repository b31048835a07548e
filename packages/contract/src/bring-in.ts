import { eventId, personId, teamId } from './ids';
import * as z from './zod';

/** `look` changes nothing and tells what `take` would do. `person`: who the account is, in a team that is new to this server. */
export const bringInQuery = z.object({ step: z.enum(['look', 'take']), person: personId.optional() });

/** Where the log part of a file is brought to. */
export function bringInAddress(step: 'look' | 'take', person?: string): string {
  return `/carry?step=${step}${person === undefined ? '' : `&person=${person}`}`;
}

const pictures = z.array(
  z.object({
    photoId: z.string(),
    bytes: z.number(),
    /** The log here speaks of it, and its picture is not here. */
    isMissing: z.boolean(),
  }),
);

/** What a file holds, and what bringing it in would do. */
export const lookOutcome = z.object({
  teamId,
  eventId,
  teamName: z.string(),
  eventName: z.string(),
  /** As the server that made the file read its clock, in milliseconds. */
  madeAt: z.number(),
  cars: z.number(),
  /** Entries of the log. */
  entries: z.number(),
  /** Actions that this server does not know, and those it does. */
  fresh: z.number(),
  known: z.number(),
  /** Whom the account can be; empty where the team is here already, and the account is one of its managers. */
  people: z.array(z.object({ personId: z.string(), name: z.string(), madeTheFile: z.boolean() })),
  pictures,
});
export type LookOutcome = z.infer<typeof lookOutcome>;

export const bringInReport = z.object({
  /** Actions. */
  came: z.number(),
  known: z.number(),
  /** What was not taken, and why: each two sentences. */
  refused: z.array(z.object({ deed: z.string(), why: z.string() })),
  /** What else happened or was left as it is. */
  notes: z.array(z.string()),
});
export type BringInReport = z.infer<typeof bringInReport>;

export const takeOutcome = z.object({ teamId, eventId, report: bringInReport, pictures });
export type TakeOutcome = z.infer<typeof takeOutcome>;

export const listBringInsInput = z.object({ teamId, eventId });
/** Newest first. */
export const listBringInsOutput = z.array(
  z.object({ id: z.string(), broughtBy: z.string(), broughtAt: z.number(), report: bringInReport }),
);
