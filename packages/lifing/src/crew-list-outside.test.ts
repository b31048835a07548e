import { describe, expect, it } from 'vitest';
import { type CrewQuestion, crewListOutside } from './crew-list-outside';
import { deepFreeze } from './fixtures';
import { fullStarterCards } from './full-starter/full-starter-cards';
import { outsideServiceIds } from './full-starter/outside-service-ids';
import { starterTriggers } from './full-starter/starter-triggers';
import type { LastDone } from './model';
import { done, incident, POINTS, twoDays } from './triggers/fixtures';

const at = POINTS;
const cards = fullStarterCards('four', 'gravel');
const ids = (question: Partial<CrewQuestion>) =>
  list(question).map((job) => job.cardId.replace('starter:', ''));

/** Everything was done in Service A, so that only what a test names is due. */
function list(own: Partial<CrewQuestion>) {
  const lastDone = new Map(
    cards.map((card): [string, LastDone] => [card.id, { pointIndex: 0, carried: null }]),
  );
  return crewListOutside(
    deepFreeze({
      ...twoDays(),
      runs: new Map(),
      plannedConditions: new Map(),
      pointIndex: at.SS1,
      position: 1,
      cards,
      lastDone,
      triggers: starterTriggers('four', 'gravel'),
      facts: [],
      doableIds: outsideServiceIds,
      ...own,
    }),
  );
}

describe('crewListOutside', () => {
  it('is empty when nothing is due', () => {
    expect(ids({})).toEqual([]);
  });

  it('at the first halt after wheels were off: the nuts again', () => {
    const facts = [done('starter:wheels-off', at.atA)];
    expect(ids({ pointIndex: 2, facts })).toEqual(['wheel-nuts-again']);
    expect(list({ pointIndex: 2, facts })[0]?.reasons[0]?.reason).toMatchObject({
      code: 'jobDone',
      words: 'follows "Wheels off: clean the rims inside", done at Service A',
    });
  });

  it('not yet at the out-control, and no more once done', () => {
    const facts = [done('starter:wheels-off', at.atA)];
    expect(ids({ pointIndex: 1, facts })).toEqual([]);
    expect(ids({ pointIndex: 4, facts: [...facts, done('starter:wheel-nuts-again', 2)] })).toEqual([]);
  });

  it('and no more after the next service: others have gone round by then', () => {
    const facts = [done('starter:wheels-off', at.atA)];
    expect(ids({ pointIndex: 8, facts })).not.toContain('wheel-nuts-again');
  });

  it('a wheel changed on the stage: the nuts again at the next halt', () => {
    const facts = [incident('puncture', at.SS1), done('starter:wheel-change', at.SS1)];
    const flat = [incident('puncture', at.SS1)];
    expect(ids({ pointIndex: at.SS1, facts: flat })).toEqual(['wheel-change', 'after-a-puncture']);
    expect(ids({ pointIndex: at.SS1, facts })).toEqual(['after-a-puncture']);
    expect(ids({ pointIndex: 4, facts })).toEqual(['after-a-puncture', 'wheel-nuts-again']);
  });

  it('an off is looked at by the crew; straightening the geometry is not theirs', () => {
    expect(ids({ pointIndex: 4, facts: [incident('off', at.SS1)] })).toEqual(['after-an-off']);
  });

  it('a temporary repair is not asked for at each halt', () => {
    const facts = [
      {
        kind: 'temporaryRepair' as const,
        cardId: 'starter:throttle',
        words: 'wire on the cable',
        pointIndex: at.SS1,
        madeGoodAt: null,
      },
    ];
    expect(ids({ pointIndex: 4, facts })).toEqual([]);
  });

  it('a counter: the air filter will not last to Service C, where a remote service is too short', () => {
    // 24 stage km, twice as fast in the dust, up to the remote service; 48 more to Service C.
    const dusty = new Map(['SS1', 'SS2', 'SS3', 'SS4'].map((id) => [id, { dust: 1000 }]));
    const short = cards.map((card) =>
      card.id === 'starter:air-filter' ? { ...card, leastServiceSeconds: 1200 } : card,
    );
    const doableIds = new Set(['starter:air-filter']);
    const question = { pointIndex: 8, plannedConditions: dusty, cards: short, doableIds };
    expect(ids(question)).toEqual(['air-filter']);
    expect(list(question)[0]?.reasons[0]?.reason).toMatchObject({ code: 'wontReach', nextChance: 'C' });
    expect(ids({ ...question, pointIndex: 2 })).toEqual(['air-filter']);
    // The remote service would do for the card as it comes.
    expect(ids({ ...question, pointIndex: 2, cards })).toEqual([]);
  });

  it('"every service" is not due at a halt, but is when it was left out in the service before', () => {
    expect(ids({ pointIndex: 2 })).toEqual([]);
    expect(ids({ pointIndex: 8 })).toEqual(['oil-level']);
  });

  it('inside service there is no list for the crew', () => {
    const facts = [incident('off', at.SS1)];
    expect(ids({ pointIndex: at.atB, facts })).toEqual([]);
    expect(ids({ pointIndex: at.atB + 1, facts })).toContain('after-an-off');
  });

  it('what lacks a tool stands last and says which', () => {
    const facts = [incident('off', at.SS1), incident('ford', at.SS1)];
    const toolsAboard = new Set(['torch', 'cloth', 'pry bar']);
    const jobs = list({ pointIndex: 4, facts, toolsAboard });
    expect(jobs.map((job) => [job.cardId, job.missingTools])).toEqual([
      ['starter:after-a-ford', []],
      ['starter:after-an-off', ['straightedge']],
    ]);
    expect(list({ pointIndex: 4, facts }).flatMap((job) => job.missingTools)).toEqual([]);
  });

  it('refuses a point that does not exist, and a card done later', () => {
    expect(() => list({ pointIndex: 99 })).toThrow('no point 99');
    const lastDone = new Map<string, LastDone>([['starter:oil-level', { pointIndex: 12, carried: null }]]);
    expect(() => list({ pointIndex: 4, lastDone })).toThrow('last done after point 4');
  });
});
