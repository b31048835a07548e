import type { CarCounts } from '@halfshaft/worklog';

import { eventId, organiserId, teamId } from './ids';
import * as z from './zod';

/** How much of an event's log its organiser is told: nothing, sums over several teams, or each car without a name, too. */
export const SHARE_CHOICES = ['nothing', 'totals', 'rows'] as const;
export type ShareChoice = (typeof SHARE_CHOICES)[number];
const shareChoice = z.enum(SHARE_CHOICES, 'Choose what the organiser is told.');

export const getShareInput = z.object({ teamId, eventId });
/** Null for an event that no organiser published. */
export const getShareOutput = z
  .object({
    organiserName: z.string(),
    choice: shareChoice,
    /** Milliseconds; null while nobody has chosen. */
    changedAt: z.number().nullable(),
    /** The log says more, or something else, than what was told. */
    isOld: z.boolean(),
  })
  .nullable();
export type TeamShare = NonNullable<z.infer<typeof getShareOutput>>;

/** What would be told now, car by car; of an event that no organiser published, none. */
export const countShareInput = z.object({ teamId, eventId });
export const countShareOutput = z.array(z.custom<CarCounts>());

export const chooseShareInput = z.object({ teamId, eventId, choice: shareChoice });

export const toldSharesInput = z.object({ organiserId });
export const toldSharesOutput = z.object({
  pools: z.array(
    z.object({
      /** Told together, since fewer than five teams share of each alone. */
      eventNames: z.array(z.string()),
      teams: z.number(),
      totals: z.custom<CarCounts>(),
      /** Each car, without a name; empty where too few agreed to that. */
      cars: z.array(z.custom<CarCounts>()),
    }),
  ),
  /** Something is shared that cannot be told yet, or no longer. */
  isWaiting: z.boolean(),
});
export type ToldShares = z.infer<typeof toldSharesOutput>;
