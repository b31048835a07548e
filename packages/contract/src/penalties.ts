import type { ControlRole, PenaltyRules } from '@halfshaft/itinerary';
import { z } from 'zod';
import { eventId, teamId } from './ids';
import { shortText, wholeNumber } from './words';

const ROLES = [
  'start',
  'timeControl',
  'serviceIn',
  'serviceOut',
  'remoteServiceIn',
  'remoteServiceOut',
  'regroupIn',
  'regroupOut',
  'parcFermeIn',
  'parcFermeOut',
  'technicalIn',
  'technicalOut',
  'tyreZoneIn',
  'tyreZoneOut',
  'refuel',
  'finish',
] as const satisfies readonly ControlRole[];

/** An hour a minute late would be out of all proportion: a slip of the finger. */
const seconds = (what: string) => wholeNumber(what, 0, 3600);
const most = (what: string) => wholeNumber(what, 0, 600).nullable();

/** The same shape as `PenaltyRules` of itinerary. */
export const penaltyRules = z.object({
  timing: z.enum(['target', 'scheduled']),
  lateSecondsPerMinute: seconds('The penalty a minute late, in seconds,'),
  earlySecondsPerMinute: seconds('The penalty a minute early, in seconds,'),
  mainControlOutSecondsPerMinute: seconds('The penalty on leaving a main control, in seconds,').nullable(),
  maxLateMinutesAtControl: most('The most minutes at one control'),
  maxLateMinutesInSection: most('The most minutes in one section'),
  maxLateMinutesInTotal: most('The most minutes in all'),
  maxEarlyMinutesInTotal: most('The most minutes early in all'),
  overMaximum: z.discriminatedUnion('means', [
    z.object({ means: z.literal('outOfTime') }),
    z.object({
      means: z.literal('fixedPenalty'),
      seconds: wholeNumber('The fixed penalty in seconds', 0, 86_400),
    }),
  ]),
  resetsAt: z
    .array(z.enum(['regroup', 'leg', 'mainControl', 'serviceOut']))
    .max(4)
    .readonly(),
  earlyAllowedAt: z.array(z.enum(ROLES)).max(ROLES.length).readonly(),
  makeUpFloorPerMille: wholeNumber('The least share of the target time', 0, 1000).nullable(),
  serviceTimeMayBeGivenUp: z.boolean(),
  heldMinutesCount: z.boolean(),
  serviceOut: z.enum(['fullTime', 'asPlanned']),
  mainControls: z.array(shortText('The name of a main control', 20)).max(50).readonly().nullable(),
  earlyEntrySeconds: wholeNumber(
    'How long before the due minute the zone may be entered, in seconds,',
    0,
    3600,
  ),
}) satisfies z.ZodType<PenaltyRules>;

export const setPenaltiesInput = z.object({ teamId, eventId, rules: penaltyRules });
