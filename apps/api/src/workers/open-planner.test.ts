import { proposeVisit, type VisitQuestion } from '@halfshaft/bayplan';
import { starterCards } from '@halfshaft/lifing';
import { afterEach, describe, expect, it } from 'vitest';
import { type OpenPlanner, openPlanner } from './open-planner';

const cards = starterCards('front', 'gravel');
const question = (workSeconds: number): VisitQuestion => ({
  workSeconds,
  isRemote: false,
  people: ['mia', 'kai'],
  work: cards.map((card, place) => ({ card, mustDo: place % 2 === 0 })),
});

let planner: OpenPlanner;
afterEach(() => planner.close());

/** What it gives where nothing is beside it. */
function proposeHere(asked: VisitQuestion) {
  const planning = proposeVisit(asked);
  for (;;) {
    const step = planning.next();
    if (step.done) return step.value;
  }
}

describe('openPlanner', () => {
  it('gives the plan that is made anywhere else of the same question', async () => {
    planner = openPlanner();
    expect(await planner.propose('car A', question(1200))).toEqual(proposeHere(question(1200)));
  });

  it('plans once for all who ask the same, and refuses what would wait too long', async () => {
    planner = openPlanner({ mostWaiting: 1 });
    const first = planner.propose('car A', question(1200));
    const same = Array.from({ length: 5 }, () => planner.propose('car A', question(1200)));
    const next = planner.propose('car A', question(1260));
    await expect(planner.propose('car B', question(1200))).rejects.toThrow('Many plans are being made');
    const plans = await Promise.all([first, ...same]);
    for (const plan of plans) expect(plan).toBe(plans[0]);
    expect((await next).kind).toBe('plan');
  });

  it('gives up a plan once nobody waits, and goes on with the next', async () => {
    planner = openPlanner();
    const [one, other] = [new AbortController(), new AbortController()];
    const left = planner.propose('car A', question(1200), one.signal);
    const queued = planner.propose('car B', question(1200), other.signal);
    const stays = planner.propose('car C', question(1200));
    other.abort();
    one.abort();
    await expect(left).rejects.toThrow('Nobody waits');
    await expect(queued).rejects.toThrow('Nobody waits');
    expect((await stays).kind).toBe('plan');
  });

  it('tells a question that makes no sense to whoever asked, and takes the next', async () => {
    planner = openPlanner();
    await expect(planner.propose('car A', question(0.5))).rejects.toThrow('must be a whole number');
    expect((await planner.propose('car A', question(1200))).kind).toBe('plan');
  });

  it('tells whoever waits when it is closed', async () => {
    planner = openPlanner();
    const waiting = planner.propose('car A', question(1200));
    const told = expect(waiting).rejects.toThrow('The server stops');
    await planner.close();
    await told;
  });
});
