import { randomUUID } from 'node:crypto';
import type { ErrorCode } from '@halfshaft/contract';
import { ITINERARY, makeAction, type TeamAtEvent } from '../support/event';
import type { Request } from './ask-door';

/** Those who send what follows. */
export interface Cast {
  team: TeamAtEvent;
  other: TeamAtEvent;
  mechanic: { cookie: string; personId: string };
  /** Signed in, but the session was ended behind their back. */
  thrownOut: { cookie: string };
  /** Signed in, but the session's time is up. */
  runOut: { cookie: string };
}

export interface BadRequest {
  name: string;
  send: (cast: Cast) => Request;
  status: number;
  code: ErrorCode;
  says: string[];
  /** Paths of the fields the problem names. */
  fields?: string[];
}

export const NOT_YOURS = ['does not exist, or it is not yours', 'choose again'];
const SIGN_IN_AGAIN = ['sign-in has run out', 'what you typed is kept'];

export const CAR = { name: 'Car', drive: 'front', surface: 'gravel', starterCards: 'none' };
export const eventOf = (source: unknown, more: object = {}) => ({
  name: 'Event',
  itinerary: { ...ITINERARY, source, ...more },
});

export const CARD_TABLE = 'Name,Place,Every,Minutes\nNuts,boot,1 day,2\n';
export const tableFor = ({ teamId, carId }: TeamAtEvent, cookie: string, more: object = {}): Request => ({
  path: '/trpc/card.importTable',
  cookie,
  body: { teamId, carId, text: CARD_TABLE, how: 'replace', ...more },
});

export const inputInAddress = (path: string, input: unknown) =>
  `${path}?input=${encodeURIComponent(JSON.stringify(input))}`;

export const BAD_REQUESTS: BadRequest[] = [
  // Ids
  {
    name: 'an id that never existed',
    send: ({ team }) => ({
      path: inputInAddress('/trpc/event.get', { teamId: team.teamId, eventId: randomUUID() }),
      method: 'GET',
      cookie: team.cookie,
    }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  {
    name: 'a malformed id',
    send: ({ team }) => ({
      path: inputInAddress('/trpc/event.get', { teamId: team.teamId, eventId: "7'; DROP TABLE event" }),
      method: 'GET',
      cookie: team.cookie,
    }),
    status: 400,
    code: 'badInput',
    says: ['not the id of an event', 'choose it again'],
    fields: ['eventId'],
  },
  {
    name: 'an id of another team, within one’s own',
    send: ({ team, other }) => ({
      path: inputInAddress('/trpc/event.get', { teamId: team.teamId, eventId: other.eventId }),
      method: 'GET',
      cookie: team.cookie,
    }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  {
    name: 'another team altogether',
    send: ({ team, other }) => ({
      path: '/trpc/car.create',
      cookie: team.cookie,
      body: { teamId: other.teamId, ...CAR },
    }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  {
    name: 'actions for the event of another team',
    send: ({ team, other }) => ({
      path: '/trpc/work.push',
      cookie: team.cookie,
      body: {
        teamId: team.teamId,
        eventId: other.eventId,
        actions: [makeAction({ kind: 'undo', args: { actionId: randomUUID() } }, team.personId)],
      },
    }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  // Standing
  {
    name: 'a mechanic who describes a car',
    send: ({ team, mechanic }) => ({
      path: '/trpc/car.create',
      cookie: mechanic.cookie,
      body: { teamId: team.teamId, ...CAR },
    }),
    status: 403,
    code: 'notAllowed',
    says: ['needs a manager', 'Ask one of them'],
  },
  {
    name: 'a mechanic who saves an itinerary',
    send: ({ team, mechanic }) => ({
      path: '/trpc/event.saveItinerary',
      cookie: mechanic.cookie,
      body: { teamId: team.teamId, eventId: team.eventId, itinerary: ITINERARY },
    }),
    status: 403,
    code: 'notAllowed',
    says: ['needs a manager'],
  },
  {
    name: 'nobody signed in',
    send: ({ team }) => ({ path: '/trpc/car.create', body: { teamId: team.teamId, ...CAR } }),
    status: 401,
    code: 'signInNeeded',
    says: SIGN_IN_AGAIN,
  },
  {
    name: 'a session that was ended',
    send: ({ team, thrownOut }) => ({
      path: '/trpc/car.create',
      cookie: thrownOut.cookie,
      body: { teamId: team.teamId, ...CAR },
    }),
    status: 401,
    code: 'signInNeeded',
    says: SIGN_IN_AGAIN,
  },
  {
    name: 'a session that has run out',
    send: ({ team, runOut }) => ({
      path: '/trpc/car.create',
      cookie: runOut.cookie,
      body: { teamId: team.teamId, ...CAR },
    }),
    status: 401,
    code: 'signInNeeded',
    says: SIGN_IN_AGAIN,
  },
  {
    name: 'a cookie with a forged signature',
    send: ({ team }) => ({
      path: '/trpc/car.create',
      cookie: team.cookie.replace(/\.[^.]*$/, '.forged'),
      body: { teamId: team.teamId, ...CAR },
    }),
    status: 401,
    code: 'signInNeeded',
    says: SIGN_IN_AGAIN,
  },
  // Fields
  {
    name: 'a start position of 0',
    send: ({ team }) => ({
      path: '/trpc/event.updateEntry',
      cookie: team.cookie,
      body: { teamId: team.teamId, entryId: team.entryId, carNumber: '7', startPosition: 0, people: 2 },
    }),
    status: 400,
    code: 'badInput',
    says: ['start position', 'whole number from 1 to 300'],
    fields: ['startPosition'],
  },
  {
    name: 'half a person, and no car number',
    send: ({ team }) => ({
      path: '/trpc/event.updateEntry',
      cookie: team.cookie,
      body: { teamId: team.teamId, entryId: team.entryId, carNumber: ' ', startPosition: 7, people: 1.5 },
    }),
    status: 400,
    code: 'badInput',
    says: ['car number is empty'],
    fields: ['carNumber', 'people'],
  },
  {
    name: 'a day that no calendar has, in no time zone',
    send: ({ team }) => ({
      path: '/trpc/event.create',
      cookie: team.cookie,
      body: {
        teamId: team.teamId,
        ...eventOf(ITINERARY.source, { startsOn: '2026-02-30', timeZone: 'Mars/North' }),
      },
    }),
    status: 400,
    code: 'badInput',
    says: ['time zone is not known'],
    fields: ['itinerary.timeZone', 'itinerary.startsOn'],
  },
  {
    name: 'the same car entered twice',
    send: ({ team }) => ({
      path: '/trpc/event.enter',
      cookie: team.cookie,
      body: {
        ...{ teamId: team.teamId, eventId: team.eventId, carId: team.carId },
        ...{ carNumber: '8', startPosition: 8, people: 2 },
      },
    }),
    status: 409,
    code: 'conflict',
    says: ['entered in the event already'],
  },
  {
    name: 'nothing where a name belongs',
    send: ({ team }) => ({
      path: '/trpc/car.create',
      cookie: team.cookie,
      body: { teamId: team.teamId, ...CAR, name: undefined },
    }),
    status: 400,
    code: 'badInput',
    says: ['name of the car is missing'],
    fields: ['name'],
  },
  // A table of cards
  {
    name: 'a mechanic who brings a table of cards in',
    send: ({ team, mechanic }) => tableFor(team, mechanic.cookie),
    status: 403,
    code: 'notAllowed',
    says: ['needs a manager', 'Ask one of them'],
  },
  {
    name: 'a table of cards for the car of another team',
    send: ({ team, other }) => tableFor(team, team.cookie, { carId: other.carId }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  {
    name: 'a table of cards without end',
    send: ({ team }) => tableFor(team, team.cookie, { text: `${CARD_TABLE}${'x'.repeat(300_000)}` }),
    status: 400,
    code: 'badInput',
    says: ['longer than 300000 characters', 'in parts'],
    fields: ['text'],
  },
  {
    name: 'a table of cards that neither adds nor replaces',
    send: ({ team }) => tableFor(team, team.cookie, { text: 7, how: 'merge' }),
    status: 400,
    code: 'badInput',
    says: ['table is missing'],
    fields: ['text', 'how'],
  },
];
