import { dueAt } from '@halfshaft/itinerary';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at } from './fixtures';
import { quickAnswers, randomEvent, slowAnswers } from './random-events/fixtures';
import { askedAt, crewAt, EVENT, judgedAt, playEvent } from './scripted-event/fixtures';

const LOG = playEvent();
const DAY = 24;
const POSITION = 4;

/** What triggers call for at a service, with the log up to a point: "id: words", late ones with "late", others with "not here". */
function calledAt(serviceId: string, upTo: number): string[] {
  const index = EVENT.services.findIndex((service) => service.id === serviceId);
  const known = LOG.filter((fact) => fact.pointIndex <= upTo);
  return judgedAt(index, known).flatMap(({ cardId, overdue, doableHere, reasons }) =>
    reasons.flatMap((each) => {
      if (each.source !== 'trigger' || each.reason.code === 'notHere') return [];
      const mark = `${doableHere ? '' : ' (not here)'}${overdue ? ' (late)' : ''}`;
      return [`${cardId.replace('starter:', '')}${mark}: ${each.reason.words}`];
    }),
  );
}

describe('three days in the woods', () => {
  /** On arrival: what is called for beside the limits. */
  const ARRIVALS: [service: string, called: string[]][] = [
    ['A', ['night-lamps: dark stage SS1 comes before Service B']],
    ['B', ['after-a-ford: through a ford on SS2', 'night-lamps-off: no dark stage is left']],
    ['C', ['under-rear: temporary repair at Service B: pipe clip tied with wire']],
    [
      'D',
      [
        'throttle: through a ford on SS4, not the first that day',
        'after-a-ford: through a ford on SS4',
        'under-rear: temporary repair at Service B: pipe clip tied with wire',
        'wet-tyres: wet stage SS5 comes before Service E',
        'hub-play (not here): through a ford on SS4, not the first that day',
        'differential-oil (not here): through a ford on SS4, not the first that day',
        'bleed-brakes (not here): soft brake pedal on SS4',
      ],
    ],
    [
      // The repair of Service B is made good here: no look any more.
      'E',
      [
        'hub-play: through a ford on SS4, not the first that day',
        'differential-oil: through a ford on SS4, not the first that day',
        'after-a-puncture: puncture on SS6',
        'bleed-brakes: soft brake pedal on SS4',
        'wheel-nuts: follows "Change a wheel", done on SS6',
        'dry-tyres: no wet stage comes before Service F',
      ],
    ],
    ['F', ['differential-oil (late): through a ford on SS4, not the first that day']],
    [
      // Service G has 20 minutes: no string for the geometry.
      'G',
      [
        'after-a-hard-landing: hard landing on SS8',
        'look-at-new-part: first look after "Front brake pads: change", fitted at Service E',
        'geometry (not here): hard landing on SS8',
      ],
    ],
  ];

  it.each(ARRIVALS)('on arrival at Service %s', (serviceId, called) => {
    const inIndex = EVENT.services.find((service) => service.id === serviceId)?.inIndex ?? -1;
    expect(calledAt(serviceId, inIndex - 1)).toEqual(called);
  });

  type Hour = [hour: number, point: number, crew: string[], next: string, cards: string[]];
  const AFTER_WHEELS_OFF = ['wheel-nuts-again', 'pressures-before-stage'];
  const HOURS: Hour[] = [
    // On SS1, before anybody knows of the ford.
    [9, 3, AFTER_WHEELS_OFF, 'B', ['night-lamps-off']],
    // In Service B: the crew has no list, the service crew has.
    [10, 6, [], 'C', ['under-rear']],
    [11, 7, [], 'C', ['under-rear']],
    // The night.
    [DAY, 7, [], 'C', ['under-rear']],
    [DAY + 9, 11, ['after-a-ford', ...AFTER_WHEELS_OFF], 'D', ['after-a-ford', 'under-rear', 'wet-tyres']],
    [DAY + 10, 14, [], 'E', ['hub-play', 'differential-oil', 'bleed-brakes', 'dry-tyres']],
    [DAY + 11, 18, AFTER_WHEELS_OFF, 'E', ['hub-play', 'differential-oil', 'bleed-brakes', 'dry-tyres']],
    [DAY + 12, 20, [], 'F', ['differential-oil (late)']],
    [2 * DAY, 21, [], 'F', ['differential-oil (late)']],
    [2 * DAY + 9, 25, AFTER_WHEELS_OFF, 'G', ['look-at-new-part']],
    // No wheel was off in Service G.
    [2 * DAY + 11, 31, ['pressures-before-stage'], 'none', []],
  ];

  it.each(HOURS)('at hour %i of the event', (hour, point, crew, next, cards) => {
    const now = at(hour, 0);
    const own = (index: number) => dueAt(EVENT.itinerary, index, POSITION);
    const reached = EVENT.itinerary.points.findLastIndex((_, index) => own(index) <= now);
    expect(reached).toBe(point);
    expect(crewAt(reached, LOG)).toEqual(crew);
    const ahead = EVENT.services.find((service) => own(service.inIndex) > now);
    expect(ahead?.id ?? 'none').toBe(next);
    if (ahead === undefined) return;
    expect(calledAt(ahead.id, reached).map((said) => said.split(':')[0])).toEqual(cards);
    const question = askedAt(
      EVENT.services.indexOf(ahead),
      LOG.filter((fact) => fact.pointIndex <= reached),
    );
    expect(quickAnswers(question)).toEqual(slowAnswers(question));
  });

  it.each(EVENT.services.map((service, index): [string, number] => [service.id, index]))(
    'at Service %s the slow way comes to the same for every card, on arrival and when all is done',
    (_id, index) => {
      const inIndex = EVENT.services[index]?.inIndex ?? 0;
      for (const known of [inIndex - 1, inIndex]) {
        const question = askedAt(
          index,
          LOG.filter((fact) => fact.pointIndex <= known),
        );
        expect(quickAnswers(question)).toEqual(slowAnswers(question));
      }
    },
  );
});

describe('random events, each judged twice', () => {
  it('quick and slow never differ in 2,000 of them', () => {
    fc.assert(
      fc.property(randomEvent, (question) => {
        expect(quickAnswers(question)).toEqual(slowAnswers(question));
      }),
      { numRuns: 2000 },
    );
  }, 60_000);
});
