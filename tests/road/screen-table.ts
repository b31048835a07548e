/** Ids of the worlds the screens are shown in: one with everything, one with nothing yet. */
export interface ScreenIds {
  team: string;
  event: string;
  entry: string;
  car: string;
  organiser: string;
  /** Of the organiser, with a draft that waits. */
  published: string;
  emptyTeam: string;
  emptyEvent: string;
  emptyCar: string;
  emptyOrganiser: string;
}

type Who = 'nobody' | 'member' | 'newcomer' | 'organiser' | 'newOrganiser';

export interface ScreenState {
  state: 'full' | 'empty' | 'error' | 'table' | 'draft';
  who: Who;
  /** What follows the route. */
  query: string;
  /** Words that must stand on it, so that a blank page is not taken for a good one. */
  shows: RegExp;
  /** What the browser may write to its console when the server says no on purpose. */
  tolerated?: RegExp[];
}

/** An id that is well formed and belongs to nobody. */
const NOBODYS = '00000000-0000-4000-8000-000000000000';
const NOT_FOUND = [/404/];

/** Every route of the build, in each state it has. A route that is missing here fails the test. */
export function screenTable(ids: ScreenIds): Record<string, ScreenState[]> {
  const at = (path: Record<string, string>) => `?${new URLSearchParams(path)}`;
  const lost = at({ team: NOBODYS, event: NOBODYS, car: NOBODYS, at: 'A' });
  const gone = (who: Who = 'member'): ScreenState => ({
    state: 'error',
    who,
    query: lost,
    shows: /does not exist|not yours|nothing here/i,
    tolerated: NOT_FOUND,
  });
  const full = (query: string, shows: RegExp, who: Who = 'member'): ScreenState => ({
    state: 'full',
    who,
    query,
    shows,
  });
  const empty = (query: string, shows: RegExp, who: Who = 'newcomer'): ScreenState => ({
    state: 'empty',
    who,
    query,
    shows,
  });
  const service = { team: ids.team, event: ids.event, car: ids.entry, at: 'B' };
  const emptyEvent = { team: ids.emptyTeam, event: ids.emptyEvent };
  return {
    '/': [full('', /Plan a service now/, 'nobody')],
    '/reliability/': [
      full(at({ team: ids.team }), /seen .* in/i),
      empty(at({ team: ids.emptyTeam }), /Nothing has failed yet/),
      gone(),
    ],
    '/try/': [full('', /Paste the itinerary/, 'nobody')],
    '/sign-in/': [full('', /Sign in/, 'nobody')],
    '/sign-up/': [full('', /account/i, 'nobody')],
    '/password/': [full(`#${'A'.repeat(32)}.${ids.team}.${ids.team}`, /Set the new password/, 'nobody')],
    '/join/': [
      {
        state: 'error',
        who: 'nobody',
        query: '#AAAAAAAAAAAAAAAAAAAAAAAAAAAA',
        shows: /leads nowhere/,
        tolerated: NOT_FOUND,
      },
    ],
    '/home/': [full('', /Larchwater Stages/), empty(at({ team: ids.emptyTeam }), /New Team/)],
    '/bring-in/': [full('', /File of an event/), empty('', /Sign in on this server first/, 'nobody')],
    '/people/': [
      full(at({ team: ids.team }), /Joss Tarn/),
      empty(at({ team: ids.emptyTeam }), /Founder/),
      gone(),
    ],
    '/cars/': [full(at({ team: ids.team }), /Heron R2/), empty(at({ team: ids.emptyTeam }), /car/i), gone()],
    '/car/': [
      full(at({ team: ids.team, car: ids.car }), /Wheel nuts/),
      { ...full(at({ team: ids.team, car: ids.car, card: 'table' }), /As it was read/), state: 'table' },
      empty(at({ team: ids.emptyTeam, car: ids.emptyCar }), /Bare car/),
      gone(),
    ],
    '/event/new/': [full(at({ team: ids.team }), /Larchwater Stages/), gone()],
    '/event/': [
      full(at({ team: ids.team, event: ids.event }), /Larchwater Stages/),
      empty(at(emptyEvent), /Empty event/),
      gone(),
    ],
    '/event/itinerary/': [full(at({ team: ids.team, event: ids.event }), /Otter Moss/), gone()],
    '/event/bulletin/': [
      full(at({ team: ids.team, event: ids.event }), /Accept bulletin 1/),
      empty(at(emptyEvent), /No bulletin waits/),
      gone(),
    ],
    '/event/sheet/': [full(at(service), /Before anyone goes under/), gone()],
    '/event/sheet/record/': [full(at(service), /Nothing filled in yet/), gone()],
    '/event/end/': [
      full(at({ team: ids.team, event: ids.event }), /workshop list/),
      empty(at(emptyEvent), /No car was entered/),
      gone(),
    ],
    '/event/readings/': [
      full(at(service), /Pad thickness/),
      empty(at(emptyEvent), /No car and service to show/),
      gone(),
    ],
    '/event/tyres/': [full(at(service), /Tyres and settings/), gone()],
    '/event/road/': [
      full(at(service), /What does the crew say/),
      empty(at(emptyEvent), /No car and service to show/),
      gone(),
    ],
    '/service/': [full(at(service), /Service B/), gone()],
    '/bay/': [full(at(service), /Front corners/), gone()],
    '/board/': [
      full(at({ team: ids.team, event: ids.event }), /official time/),
      empty(at(emptyEvent), /No car entered yet/),
      gone(),
    ],
    '/log/': [
      full(at({ team: ids.team, event: ids.event }), /Joss Tarn/),
      empty(at(emptyEvent), /nothing|empty|yet/i),
      gone(),
    ],
    '/organiser/': [
      full(at({ organiser: ids.organiser }), /Larchwater Stages/, 'organiser'),
      {
        ...full(at({ organiser: ids.organiser, event: ids.published }), /Bulletin 2 is a draft/, 'organiser'),
        state: 'draft',
      },
      empty(at({ organiser: ids.emptyOrganiser }), /No event yet/, 'newOrganiser'),
      { ...gone(), query: at({ organiser: NOBODYS }) },
    ],
    '/organiser/retirements/': [
      full(at({ organiser: ids.organiser, event: ids.published }), /cars started/, 'organiser'),
      { ...gone('organiser'), query: at({ organiser: ids.organiser, event: NOBODYS }) },
    ],
    '/organiser/times/': [
      full(
        at({ organiser: ids.organiser, event: ids.published }),
        /times a car left service late/,
        'organiser',
      ),
      { ...gone('organiser'), query: at({ organiser: ids.organiser, event: NOBODYS }) },
    ],
    '/organiser/failing/': [
      full(at({ organiser: ids.organiser }), /Per 1,000 stage km/, 'organiser'),
      empty(at({ organiser: ids.emptyOrganiser }), /No event with a list yet/, 'newOrganiser'),
      { ...gone(), query: at({ organiser: NOBODYS }) },
    ],
  };
}
