import { randomUUID } from 'node:crypto';
import { makeAction } from '../support/event';
import { type BadRequest, CAR, eventOf, inputInAddress, NOT_YOURS } from './bad-requests';

const UNREADABLE = ['could not be read', 'Reload the page'];

/** What is refused for its size or its form, before anyone looks at what it says. */
export const BAD_TRANSPORT: BadRequest[] = [
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
      path: inputInAddress('/trpc/car.create', { teamId: team.teamId, ...CAR }),
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
