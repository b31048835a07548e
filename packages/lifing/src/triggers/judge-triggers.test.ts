import { describe, expect, it } from 'vitest';
import { cardWith, deepFreeze } from '../fixtures';
import {
  CARDS,
  done,
  fitted,
  incident,
  POINTS,
  repair,
  type SERVICES,
  type Situation,
  triggersQuestion,
} from './fixtures';
import { judgeTriggers } from './judge-triggers';
import type { TriggerVerdict } from './model';

const at = POINTS;
type Said = 'nothing' | { now: string } | { late: string } | { notHere: string } | { tooLate: string };
type Row = [sentence: string, service: keyof typeof SERVICES, card: string, situation: Situation, said: Said];

const ROWS: Row[] = [
  // Incidents
  ['no incident: nothing is called for', 'C', 'look', {}, 'nothing'],
  [
    'an off on SS1 is looked at in the next service',
    'B',
    'look',
    { facts: [incident('off', at.SS1)] },
    { now: 'off the road on SS1' },
  ],
  [
    'a hit has the same card',
    'B',
    'look',
    { facts: [incident('contact', at.SS2)] },
    { now: 'hit something on SS2' },
  ],
  [
    'an off after this service is not known here yet',
    'B',
    'look',
    { facts: [incident('off', at.SS3)] },
    'nothing',
  ],
  ['another incident has other cards', 'B', 'look', { facts: [incident('softPedal', at.SS1)] }, 'nothing'],
  [
    'looked at in this service: answered',
    'B',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.atB)] },
    'nothing',
  ],
  [
    'looked at by the crew at the stage: answered',
    'B',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.SS1)] },
    'nothing',
  ],
  [
    'looked at before it happened: not answered',
    'B',
    'look',
    { facts: [done('look', at.atA), incident('off', at.SS1)] },
    { now: 'off the road on SS1' },
  ],
  [
    'told at the in-control after the look was done: due again',
    'B',
    'look',
    { facts: [done('look', at.atB), incident('off', at.atB)] },
    { now: 'off the road at Service B' },
  ],
  [
    'not looked at in Service B: late in Service C',
    'C',
    'look',
    { facts: [incident('off', at.SS1)] },
    { late: 'off the road on SS1' },
  ],
  [
    'a second off after the look: due again, not late',
    'C',
    'look',
    { facts: [incident('off', at.SS1), done('look', at.atB), incident('off', at.SS4)] },
    { now: 'off the road on SS4' },
  ],
  [
    'a soft pedal cannot be bled in a remote service of ten minutes',
    'B',
    'bleed',
    { facts: [incident('softPedal', at.SS2)] },
    { notHere: 'next chance Service C' },
  ],
  [
    'it is bled in the next long one, and is not late there',
    'C',
    'bleed',
    { facts: [incident('softPedal', at.SS2)] },
    { now: 'soft brake pedal on SS2' },
  ],
  [
    'one ford is no reason to look under the car',
    'C',
    'under',
    { facts: [incident('ford', at.SS1)] },
    'nothing',
  ],
  [
    'two fords in one day are',
    'C',
    'under',
    { facts: [incident('ford', at.SS1), incident('ford', at.SS3)] },
    { now: 'through a ford on SS3, not the first that day' },
  ],
  [
    'a ford today and one tomorrow are not two',
    'E',
    'under',
    { facts: [incident('ford', at.SS1), incident('ford', at.SS6)] },
    'nothing',
  ],
  [
    'a third ford after the look calls again',
    'C',
    'under',
    {
      facts: [
        incident('ford', at.SS1),
        incident('ford', at.SS2),
        done('under', at.atB),
        incident('ford', at.SS3),
      ],
    },
    { now: 'through a ford on SS3, not the first that day' },
  ],
  // Another job done
  [
    'pads changed here: nuts here',
    'C',
    'nuts',
    { facts: [done('pads', at.atC)] },
    { now: 'follows "Change the pads", done at Service C' },
  ],
  [
    'nuts done after the pads: answered',
    'C',
    'nuts',
    { facts: [done('pads', at.atC), done('nuts', at.atC)] },
    'nothing',
  ],
  [
    'nuts done before the pads: due again',
    'C',
    'nuts',
    { facts: [done('nuts', at.atC), done('pads', at.atC)] },
    { now: 'follows "Change the pads", done at Service C' },
  ],
  [
    'nuts left out after the pads: late at the next service',
    'D',
    'nuts',
    { facts: [done('pads', at.atC)] },
    { late: 'follows "Change the pads", done at Service C' },
  ],
  [
    'the re-check at the first halt is no work of the service',
    'D',
    'nuts-again',
    { facts: [done('pads', at.atC)] },
    'nothing',
  ],
  // What comes next
  ['no dark stage: no lamps', 'C', 'lamps-on', {}, 'nothing'],
  [
    'SS5 is dark: lamps on in Service C, the last before it',
    'C',
    'lamps-on',
    { dark: ['SS5'] },
    { now: 'dark stage SS5 comes before Service D' },
  ],
  ['SS5 is dark: not yet in Service A, Service C will do', 'A', 'lamps-on', { dark: ['SS5'] }, 'nothing'],
  [
    'SS3 is dark: on in Service A already, the remote service is too short',
    'A',
    'lamps-on',
    { dark: ['SS3'] },
    { now: 'dark stage SS3 comes before Service C' },
  ],
  [
    'forgotten in Service A: cannot be done in B, and SS3 is dark',
    'B',
    'lamps-on',
    { dark: ['SS3'] },
    { tooLate: 'dark stage SS3 comes before Service C' },
  ],
  [
    'lamps are on: not again',
    'C',
    'lamps-on',
    { dark: ['SS3', 'SS5'], facts: [done('lamps-on', at.atA)] },
    'nothing',
  ],
  [
    'lamps were on and came off: on again for SS8',
    'E',
    'lamps-on',
    { dark: ['SS5', 'SS8'], facts: [done('lamps-on', at.atC), done('lamps-off', at.atD)] },
    { now: 'dark stage SS8 comes before the finish' },
  ],
  [
    'the dark stage was cancelled: no lamps',
    'C',
    'lamps-on',
    { dark: ['SS5'], notDriven: ['SS5'] },
    'nothing',
  ],
  [
    'the last dark stage is over: lamps off at the first service',
    'D',
    'lamps-off',
    { dark: ['SS5'], facts: [done('lamps-on', at.atC)] },
    { now: 'no dark stage is left' },
  ],
  [
    'left on in Service D: late in Service E',
    'E',
    'lamps-off',
    { dark: ['SS5'], facts: [done('lamps-on', at.atC)] },
    { late: 'no dark stage is left' },
  ],
  [
    'a dark stage is still to come: lamps stay on',
    'D',
    'lamps-off',
    { dark: ['SS5', 'SS8'], facts: [done('lamps-on', at.atC)] },
    'nothing',
  ],
  ['lamps never went on: nothing to take off', 'D', 'lamps-off', { dark: ['SS5'] }, 'nothing'],
  [
    'SS5 is cancelled with the lamps on since Service A: off, and could have been in B',
    'C',
    'lamps-off',
    { dark: ['SS5'], notDriven: ['SS5'], facts: [done('lamps-on', at.atA)] },
    { late: 'no dark stage is left' },
  ],
  [
    'SS6 will be wet: other tyres in Service D',
    'D',
    'wet',
    { wet: ['SS6'] },
    { now: 'wet stage SS6 comes before Service E' },
  ],
  [
    'SS6 was planned wet but is confirmed dry',
    'D',
    'wet',
    { wet: ['SS6'], confirmedDry: ['SS6'] },
    'nothing',
  ],
  [
    'the next loop is dry: dry tyres, although a wet one comes later',
    'C',
    'dry',
    { wet: ['SS3', 'SS8'], facts: [done('wet', at.atB)] },
    { now: 'no wet stage comes before Service D' },
  ],
  [
    'the next loop is wet too: wet tyres stay on',
    'C',
    'dry',
    { wet: ['SS3', 'SS5'], facts: [done('wet', at.atB)] },
    'nothing',
  ],
  // Newly fitted
  [
    'new pads have not been driven yet: no look in the service they were fitted in',
    'C',
    'new-look',
    { facts: [done('pads', at.atC)] },
    'nothing',
  ],
  [
    'new pads have done a stage: a look',
    'D',
    'new-look',
    { facts: [done('pads', at.atC)] },
    { now: 'first look after "Change the pads", fitted at Service C' },
  ],
  [
    'the one stage was cancelled: a stage later',
    'D',
    'new-look',
    { facts: [done('pads', at.atC)], notDriven: ['SS5'] },
    'nothing',
  ],
  [
    'looked at once: answered for good',
    'E',
    'new-look',
    { facts: [done('pads', at.atC), done('new-look', at.atD)] },
    'nothing',
  ],
  [
    'not looked at in Service D: late in Service E',
    'E',
    'new-look',
    { facts: [done('pads', at.atC)] },
    { late: 'first look after "Change the pads", fitted at Service C' },
  ],
  [
    'fitted by the crew on the road: the same',
    'B',
    'new-look',
    { facts: [fitted('pads', at.SS1)] },
    { now: 'first look after "Change the pads", fitted on SS1' },
  ],
  [
    'fitted again: a look again',
    'E',
    'new-look',
    { facts: [done('pads', at.atC), done('new-look', at.atD), fitted('pads', at.atD)] },
    { now: 'first look after "Change the pads", fitted at Service D' },
  ],
  // Temporary repair
  [
    'a temporary repair of this service is not looked at in it',
    'B',
    'under',
    { facts: [repair('under', at.atB)] },
    'nothing',
  ],
  [
    'it is looked at in the next one',
    'C',
    'under',
    { facts: [repair('under', at.atB)] },
    { now: 'temporary repair at Service B: wire round the hanger' },
  ],
  [
    'made on the road: looked at on arrival',
    'B',
    'under',
    { facts: [repair('under', at.SS1)] },
    { now: 'temporary repair on SS1: wire round the hanger' },
  ],
  [
    'looked at here: answered for this service',
    'C',
    'under',
    { facts: [repair('under', at.SS1), done('under', at.atC)] },
    'nothing',
  ],
  [
    'and due again at the next one, not late',
    'D',
    'under',
    { facts: [repair('under', at.SS3), done('under', at.atC)] },
    { now: 'temporary repair on SS3: wire round the hanger' },
  ],
  [
    'passed over in Service B: late in Service C',
    'C',
    'under',
    { facts: [repair('under', at.SS1)] },
    { late: 'temporary repair on SS1: wire round the hanger' },
  ],
  ['made good in this service: over', 'C', 'under', { facts: [repair('under', at.SS1, at.atC)] }, 'nothing'],
  [
    'made good only later: still due here',
    'B',
    'under',
    { facts: [repair('under', at.SS1, at.atC)] },
    { now: 'temporary repair on SS1: wire round the hanger' },
  ],
  ['another card is not called for', 'C', 'look', { facts: [repair('under', at.SS1)] }, 'nothing'],
];

function saidOf(verdict: TriggerVerdict | undefined): Said {
  if (verdict === undefined) return 'nothing';
  const words = verdict.reasons.map((reason) => reason.words);
  if (!verdict.doableHere) {
    expect(verdict.verdict).toBe('leave');
    expect(words[0]).toContain('cannot be done at this service');
    const chance = (words[0] ?? '').replace('cannot be done at this service, ', '');
    return verdict.overdue ? { tooLate: words.slice(1).join('; ') } : { notHere: chance };
  }
  expect(verdict.verdict).toBe('doNow');
  return verdict.overdue ? { late: words.join('; ') } : { now: words.join('; ') };
}

describe('judgeTriggers, a situation a row', () => {
  it.each(ROWS)('%s (Service %s, %s)', (_sentence, service, cardId, situation, said) => {
    const verdicts = judgeTriggers(deepFreeze(triggersQuestion(service, situation)));
    expect(saidOf(verdicts.find((each) => each.cardId === cardId))).toEqual(said);
  });

  it('has at least one row that calls and one that does not for every kind of trigger', () => {
    expect(ROWS.length).toBeGreaterThanOrEqual(30);
    for (const card of ['look', 'nuts', 'lamps-on', 'lamps-off', 'wet', 'dry', 'new-look', 'under']) {
      const said = ROWS.filter((row) => row[2] === card).map((row) => row[4] === 'nothing');
      expect(said, card).toContain(false);
    }
  });
});

describe('judgeTriggers', () => {
  it('gives several reasons to one card, in the order of the triggers', () => {
    const question = triggersQuestion('C', {
      facts: [incident('off', POINTS.SS4), repair('look', POINTS.SS3)],
    });
    const codes = judgeTriggers(question).map((each) => each.reasons.map((reason) => reason.code));
    expect(codes).toEqual([['incident', 'temporaryRepair']]);
  });

  it('names the stage ahead and the next chance in its reason', () => {
    const [verdict] = judgeTriggers(triggersQuestion('C', { dark: ['SS5'] }));
    expect(verdict?.reasons[0]).toMatchObject({
      triggerId: 'dark',
      pointIndex: POINTS.SS5,
      stageId: 'SS5',
      nextChance: 'D',
    });
  });

  it('names services as it is told to', () => {
    const serviceName = (id: string) => `Bay ${id}`;
    const question = { ...triggersQuestion('C', { dark: ['SS5'] }), serviceName };
    expect(judgeTriggers(question)[0]?.reasons[0]?.words).toBe('dark stage SS5 comes before Bay D');
  });

  it('says nothing of a card the car does not have, or when there are no triggers', () => {
    const question = triggersQuestion('B', {
      facts: [incident('off', POINTS.SS1), done('gone', POINTS.SS1)],
    });
    expect(judgeTriggers({ ...question, cards: CARDS.filter((card) => card.id !== 'look') })).toEqual([]);
    expect(judgeTriggers({ ...question, triggers: [] })).toEqual([]);
  });

  it('looks at further cards of a temporary repair when the trigger names them', () => {
    const question = triggersQuestion('C', { facts: [repair('under', POINTS.SS4)] });
    const triggers = [{ kind: 'temporaryRepair' as const, id: 'repair', cardIds: ['look'] }];
    const cards = [...CARDS, cardWith({ id: 'other' })];
    const called = judgeTriggers({ ...question, triggers, cards }).map((each) => each.cardId);
    expect(called).toEqual(['look', 'under']);
  });

  it('refuses a service or a point that does not exist', () => {
    const question = triggersQuestion('A', {});
    expect(() => judgeTriggers({ ...question, serviceIndex: 9 })).toThrow('no service at index 9');
    const facts = [incident('off', 99)];
    expect(() => judgeTriggers({ ...question, facts })).toThrow('no point 99');
  });
});
