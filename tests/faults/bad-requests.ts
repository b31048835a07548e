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

const NOT_YOURS = ['does not exist, or it is not yours', 'choose again'];
const SIGN_IN_AGAIN = ['sign-in has run out', 'what you typed is kept'];
const UNREADABLE = ['could not be read', 'Reload the page'];

const CAR = { name: 'Car', drive: 'front', surface: 'gravel', withStarterCards: false };
const eventOf = (source: unknown, more: object = {}) => ({
  name: 'Event',
  itinerary: { ...ITINERARY, source, ...more },
});

const get = (path: string, input: unknown) => `${path}?input=${encodeURIComponent(JSON.stringify(input))}`;

export const BAD_REQUESTS: BadRequest[] = [
  // Too much
  {
    name: 'a paste of 5 MB',
    send: ({ team }) => ({
      path: '/trpc/event.create',
      cookie: team.cookie,
      body: { teamId: team.teamId, ...eventOf('x'.repeat(5_000_000)) },
    }),
    status: 400,
    code: 'badInput',
    says: ['larger than 1 MB', 'itinerary table only'],
    fields: ['itinerary.source'],
  },
  {
    name: 'a body of 9 MB',
    send: ({ team }) => ({
      path: '/trpc/event.create',
      cookie: team.cookie,
      body: { teamId: team.teamId, ...eventOf('x'.repeat(9_000_000)) },
    }),
    status: 413,
    code: 'tooMuch',
    says: ['larger than 8 MB', 'Send less'],
  },
  {
    name: 'more actions than one push carries',
    send: ({ team }) => ({
      path: '/trpc/work.push',
      cookie: team.cookie,
      body: {
        teamId: team.teamId,
        eventId: team.eventId,
        actions: Array.from({ length: 101 }, () =>
          makeAction({ kind: 'undo', args: { actionId: randomUUID() } }, team.personId),
        ),
      },
    }),
    status: 400,
    code: 'badInput',
    says: ['100'],
    fields: ['actions'],
  },
  // Ids
  {
    name: 'an id that never existed',
    send: ({ team }) => ({
      path: get('/trpc/event.get', { teamId: team.teamId, eventId: randomUUID() }),
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
      path: get('/trpc/event.get', { teamId: team.teamId, eventId: "7'; DROP TABLE event" }),
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
      path: get('/trpc/event.get', { teamId: team.teamId, eventId: other.eventId }),
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
  // Transport
  {
    name: 'an unknown procedure',
    send: ({ team }) => ({ path: '/trpc/car.explode', cookie: team.cookie, body: {} }),
    status: 404,
    code: 'unknown',
    says: NOT_YOURS,
  },
  {
    name: 'broken JSON',
    send: ({ team }) => ({ path: '/trpc/car.create', cookie: team.cookie, text: '{"teamId": "' }),
    status: 400,
    code: 'badInput',
    says: UNREADABLE,
  },
  {
    name: 'JSON that is no object',
    send: ({ team }) => ({ path: '/trpc/car.create', cookie: team.cookie, text: '[1, 2, null]' }),
    status: 400,
    code: 'badInput',
    says: ['expected object'],
  },
  {
    name: 'no body',
    send: ({ team }) => ({ path: '/trpc/car.create', cookie: team.cookie }),
    status: 415,
    code: 'badInput',
    says: UNREADABLE,
  },
  {
    name: 'a change asked for by GET',
    send: ({ team }) => ({
      path: get('/trpc/car.create', { teamId: team.teamId, ...CAR }),
      method: 'GET',
      cookie: team.cookie,
    }),
    status: 405,
    code: 'badInput',
    says: UNREADABLE,
  },
  {
    name: 'a method no procedure has',
    send: ({ team }) => ({ path: '/trpc/car.create', method: 'DELETE', cookie: team.cookie, body: {} }),
    status: 405,
    code: 'badInput',
    says: UNREADABLE,
  },
  {
    name: 'a question asked by POST',
    send: ({ team }) => ({ path: '/trpc/car.list', cookie: team.cookie, body: { teamId: team.teamId } }),
    status: 405,
    code: 'badInput',
    says: UNREADABLE,
  },
];
