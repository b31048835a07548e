import type {
  Conditions,
  ControlRole,
  Itinerary,
  ItineraryProblem,
  PenaltyRules,
  ReadItineraryOptions,
  StageId,
} from '@halfshaft/itinerary';
import type { Counters, JobCard } from '@halfshaft/lifing';
import type { CarRow } from './car';
import { carId, entryId, eventId, organiserId, publishedEventId, teamId } from './ids';
import type { TeamPerson } from './people';
import { shortText, wholeNumber } from './words';
import { conditions } from './work';
import * as z from './zod';

/** The pasted table: kept as it was typed, read by the itinerary package. A megabyte is a thousand stages. */
const MOST_CHARACTERS = 1_000_000;

export const eventName = shortText('The name of the event', 100);
const timeZone = shortText('The time zone', 60).refine(
  isTimeZone,
  'That time zone is not known. Choose one from the list.',
);
const startsOn = z.iso.date('Type the first day as year-month-day, such as 2026-06-13.');

export const itineraryText = z.object({
  source: z
    .string()
    .max(MOST_CHARACTERS, 'The pasted text is larger than 1 MB. Paste the itinerary table only.'),
  timeZone,
  startsOn,
  roadTimedFrom: z.enum(['stageStart', 'stageFinish']),
  startIntervalSeconds: wholeNumber('The start interval in seconds', 30, 600),
  defaultGapSeconds: wholeNumber('The gap from control to stage start in seconds', 60, 1800),
  // Versions saved before there was a choice have none; their times were read for the first car.
  printedFor: z.enum(['positionOne', 'carZero']).default('positionOne'),
});
export type ItineraryText = z.infer<typeof itineraryText>;

/**
 * How a pasted itinerary is to be read. The screens and the server both take it from here, so that they never differ in
 * what they say of one text.
 *
 * @example
 * readItinerary(text.source, itineraryOptions(text))
 */
export function itineraryOptions(text: Omit<ItineraryText, 'source'>): ReadItineraryOptions {
  const { timeZone, startsOn, roadTimedFrom, startIntervalSeconds, defaultGapSeconds, printedFor } = text;
  return {
    timeZone,
    startDate: startsOn,
    roadTimedFrom,
    startIntervalSeconds,
    defaultGapSeconds,
    printedFor,
  };
}

/** With any problem of severity error nothing was saved. */
export const itinerarySaved = <T extends z.ZodRawShape>(shape: T) =>
  z.discriminatedUnion('ok', [
    z.object({ ok: z.literal(true), ...shape, warnings: z.array(z.custom<ItineraryProblem>()) }),
    z.object({ ok: z.literal(false), problems: z.array(z.custom<ItineraryProblem>()) }),
  ]);

const eventFields = { eventId, name: z.string(), timeZone: z.string(), startsOn: z.string() };

export const listEventsInput = z.object({ teamId });
export const listEventsOutput = z.array(
  z.object({
    ...eventFields,
    cars: z.array(z.object({ entryId, carId, carName: z.string(), carNumber: z.string() })),
  }),
);

export const createEventInput = z.object({ teamId, name: eventName, itinerary: itineraryText });
export const createEventOutput = itinerarySaved({ eventId });

export const saveItineraryInput = z.object({ teamId, eventId, itinerary: itineraryText });
export const saveItineraryOutput = itinerarySaved({ number: z.number() });

export const entryFields = {
  carNumber: shortText('The car number', 8),
  startPosition: wholeNumber('The start position', 1, 300),
  people: wholeNumber('The number of people', 1, 20),
};
export const enterCarInput = z.object({ teamId, eventId, carId, ...entryFields });
export const enterCarOutput = z.object({ entryId });

/** A later section has a number from 2; the first one's position is `startPosition`. */
const laterSection = z
  .string()
  .regex(/^(?:[2-9]|[1-9]\d)$/, 'A section must be a whole number from 2 to 99.');

/** Start positions set anew at regroups, by section; a section without one carries on the one before. */
export const positionsBySection = z.record(laterSection, wholeNumber('The start position', 1, 300));

/** Without `positionsBySection` those of later sections stay as they are. */
export const updateEntryInput = z.object({
  teamId,
  entryId,
  ...entryFields,
  positionsBySection: positionsBySection.optional(),
});

/** Events that organisers have published, for every signed-in account. */
export const publishedEvents = z.array(
  z.object({
    organiserId,
    organiserName: z.string(),
    publishedEventId,
    name: z.string(),
    timeZone: z.string(),
    startsOn: z.string(),
  }),
);
export const takeOverEventInput = z.object({ teamId, organiserId, publishedEventId });
export const takeOverEventOutput = z.object({ eventId });

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

/** More stages than any event has, so that a table is never endless. */
const MOST_STAGES = 500;

/** What stages are expected to be like, by stage. A stage that is not named is expected to be like any other. */
export const plannedConditions = z
  .record(shortText('The stage', 20), conditions)
  .refine(
    (planned) => Object.keys(planned).length <= MOST_STAGES,
    `At most ${MOST_STAGES} stages can be saved.`,
  );

export const setConditionsInput = z.object({ teamId, eventId, conditions: plannedConditions });

/** A year and a day: an event tried out beforehand may run on a clock of its own. */
const FARTHEST_CLOCK_SECONDS = 366 * 86_400;

/** The event's official clock minus the server's, in whole seconds. */
export const setClockOffsetInput = z.object({
  teamId,
  eventId,
  clockOffsetSeconds: wholeNumber(
    'The difference of the clocks in seconds',
    -FARTHEST_CLOCK_SECONDS,
    FARTHEST_CLOCK_SECONDS,
  ),
});

/** Null: the regulations set no number. */
export const tyreAllowance = wholeNumber('The number of tyres', 1, 200).nullable();
export const setTyreAllowanceInput = z.object({ teamId, eventId, tyreAllowance });

export const getEventInput = z.object({ teamId, eventId });

/** All of one event that a phone needs to go on alone: everything but the log, which is pulled by seq. */
export interface EventReplica {
  eventId: string;
  name: string;
  /** The event's official clock minus the server's, in seconds. */
  clockOffsetSeconds: number;
  /** The server's clock in milliseconds when this was made. */
  serverTime: number;
  itinerary: Itinerary;
  itineraryNumber: number;
  itineraryText: ItineraryText;
  /** As the managers set them; otherwise what most events have. */
  penaltyRules: PenaltyRules;
  /** By stage: what the managers expect. What a crew confirms wins over it. */
  plannedConditions: Record<StageId, Conditions>;

  /** How many tyres each car may use; null while no number is set. */
  tyreAllowance: number | null;
  entries: EntryReplica[];
  people: TeamPerson[];
  /** The person the session belongs to. */
  me: { personId: string; role: 'admin' | 'manager' | 'mechanic' | 'driver' };
  lastSeq: number;
}
export interface EntryReplica {
  entryId: string;
  car: CarRow;
  carNumber: string;
  /** In the first section. */
  startPosition: number;
  /** Set anew at a regroup: by section, from the second one on; a section without one carries on the one before. */
  positionsBySection: Record<string, number>;
  people: number;
  cards: JobCard[];
  /** By card: wear brought along from before the event. */
  carried: Record<string, Partial<Counters>>;
}
export const eventReplica = z.custom<EventReplica>();

function isTimeZone(name: string): boolean {
  try {
    new Intl.DateTimeFormat('en', { timeZone: name });
    return true;
  } catch {
    return false; // the runtime's own list decides
  }
}
