import { describe, expect, it } from 'vitest';
import { at, eventOf } from './fixtures';
import { routeSteps } from './route-steps';

describe('routeSteps', () => {
  const event = eventOf([
    { service: 20 },
    { stage: 'SS1', metres: 8_000, road: 10_000 },
    { overnight: true },
    { service: 20, road: 2_000 },
    { finish: true, road: 3_000 },
  ]);
  // Cars follow at one minute on the first day, at two minutes on the second.
  const startBlocks = [
    { section: 1, fromPosition: 1, intervalSeconds: 60 },
    { section: 2, fromPosition: 1, intervalSeconds: 120 },
  ];
  const steps = routeSteps({ ...event.itinerary, startBlocks }, 4);

  it('adds up the metres driven before each piece', () => {
    expect(steps.map((step) => [step.segment.kind, step.metresBefore])).toEqual([
      ['halt', 0],
      ['road', 0],
      ['road', 10_000],
      ['stage', 10_000],
      ['road', 18_000],
      ['halt', 20_000],
      ['road', 20_000],
    ]);
  });

  it('times a stage to its finish by the interval it was started at', () => {
    const stage = steps.find((step) => step.segment.kind === 'stage');
    // SS1 starts at 08:33 for the first car, three minutes later for the fourth; 8 km at 45 s a km are 6 minutes.
    expect(stage).toMatchObject({ startsAt: at(8, 36), endsAt: at(8, 42) });
  });

  it('times the arrival in the next section by the interval of that section', () => {
    const arrival = steps[4];
    expect(arrival?.endsAt).toBe(at(24 + 8, 0) + Math.round(2_000 * 0.06) + 8 * 45 + 3 * 120);
  });
});
