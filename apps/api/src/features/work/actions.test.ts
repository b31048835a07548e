import { ACTION_VERSION, emptyState, type PushedAction, type WorkState } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { type Facts, idsIn, refusalOf, rulesFor, type ShapedAction, shapeAction } from './actions';

const CAR = '00000000-0000-4000-8000-00000000000c';
const ENTRY = '00000000-0000-4000-8000-00000000000e';
const CARD = '00000000-0000-4000-8000-0000000000ca';
const SNAG = '00000000-0000-4000-8000-0000000000a6';
const NUTS = '00000000-0000-4000-8000-0000000000cb';
const OTHER = '00000000-0000-4000-8000-000000000099';

const FACTS: Facts = {
  stored: new Map(),
  people: new Set(['mia']),
  carOf: new Map([[ENTRY, CAR]]),
  cards: new Map([[CARD, { carId: CAR, needsSignature: true, readings: [pads(), level()] }]]),
  cars: new Map([
    [
      CAR,
      {
        cards: [
          { id: CARD, starterId: 'starter:front-pads' },
          { id: NUTS, starterId: 'starter:wheel-nuts' },
        ],
      },
    ],
  ]),
  snagsElsewhere: new Set([OTHER]),
  factsElsewhere: new Set([OTHER]),
  records: new Map(),
  services: new Set(['A', 'B']),
  stages: new Set(['SS1']),
  controls: new Set(['TC1A']),
};

function pads() {
  const reading = { id: 'pads', name: 'Pads', kind: 'wear' as const, unit: 'mm', decimals: 1 };
  return { ...reading, positions: ['FL', 'FR'], low: 30, high: null, required: true };
}

function level() {
  return { ...pads(), id: 'level', positions: [], required: true };
}

const cardTask = (more: object = {}) => ({
  task: { entryId: ENTRY, serviceId: 'A', source: { kind: 'card', cardId: CARD }, ...more },
});
const snagTask = { task: { entryId: ENTRY, serviceId: 'A', source: { kind: 'snag', snagId: SNAG } } };
const snag = (more: object = {}) => ({
  ...{ snagId: SNAG, entryId: ENTRY, serviceId: null, place: 'RR', words: 'oil', urgent: false, ...more },
});

function pushed(kind: string, args: unknown, more: Partial<PushedAction> = {}): PushedAction {
  const stamp = { actionId: OTHER, deviceId: 'phone', deviceSeq: 1, deviceTime: 1, version: ACTION_VERSION };
  return { ...stamp, by: 'mia', kind, args, ...more };
}

function shaped(kind: string, args: unknown, more: Partial<PushedAction> = {}) {
  const shape: ShapedAction = shapeAction(pushed(kind, args, more));
  if (!shape.ok) throw new Error(shape.sentence);
  return shape.action;
}

describe('shapeAction', () => {
  it('says where the arguments are wrong', () => {
    const shape = shapeAction(pushed('takeTask', cardTask({ entryId: 'car 7' })));
    expect(shape).toMatchObject({ ok: false, code: 'malformed' });
    expect(shape.ok ? '' : shape.sentence).toContain('task.entryId');
  });

  it('drops what no action of this kind carries', () => {
    expect(shaped('takeTask', { ...cardTask(), admin: true }).args).toEqual(cardTask());
  });

  it('takes only whole minutes of a control', () => {
    const args = { entryId: ENTRY, controlId: 'TC1A', writtenAt: 605, heldMinutes: 0 };
    expect(shapeAction(pushed('recordTime', args))).toMatchObject({ ok: false, code: 'malformed' });
    const tooLong = { ...args, writtenAt: 600, heldMinutes: 601 };
    expect(shapeAction(pushed('recordTime', tooLong))).toMatchObject({ ok: false, code: 'malformed' });
  });

  it('leaves a kind or version it does not know to be named by `decide`', () => {
    for (const action of [pushed('paintCar', {}), pushed('takeTask', {}, { version: ACTION_VERSION + 1 })]) {
      expect(shapeAction(action)).toEqual({ ok: true, ours: false, action });
    }
  });
});

describe('idsIn', () => {
  it('names every id that must be looked up', () => {
    const actions = [
      shaped('takeTask', cardTask()),
      shaped('takeTask', snagTask),
      shaped('raiseSnag', snag()),
      shaped('undo', { actionId: CAR }),
    ];
    expect(idsIn(actions)).toEqual({
      people: ['mia', 'mia', 'mia', 'mia'],
      entries: [ENTRY, ENTRY, ENTRY],
      cards: [CARD],
      snags: [SNAG],
      facts: [],
      reopening: [],
      undone: [CAR],
    });
  });
});

const recordFact = (fact: object, more: object = {}) =>
  shaped('recordFact', {
    factId: SNAG,
    entryId: ENTRY,
    at: { kind: 'road', afterStageId: 'SS1' },
    fact,
    ...more,
  });
const incident = { kind: 'incident', code: 'hardLanding', place: null, words: '' };
const fitted = (cardId: string) => ({ kind: 'fitted', cardId, position: null, words: '' });
const madeGood = (of: string) => ({ kind: 'madeGood', of, words: '' });
const photo = (of: string, file: object = {}) => ({
  ...{ kind: 'photo', of, words: '', bytes: 400_000, sha256: 'a'.repeat(64) },
  ...file,
});

describe('a fact of the car', () => {
  const codeOf = (action: ReturnType<typeof shaped>, slice: WorkState = emptyState) =>
    refusalOf(FACTS, slice, action)?.code ?? null;
  const known = {
    ...{ id: SNAG, entryId: ENTRY, serviceId: null, place: 'RR', words: 'oil', urgent: false },
    ...{ raisedBy: 'mia', withdrawn: false, changedSeq: 1, changedBy: 'mia' },
  };
  const withSnag = { ...emptyState, snags: new Map([[SNAG, known]]) };

  it('names the card and the task it speaks of', () => {
    const actions = [recordFact(fitted(CARD)), recordFact(madeGood(`${ENTRY}~A~card~${OTHER}`))];
    expect(idsIn(actions)).toMatchObject({ cards: [OTHER, CARD], facts: [SNAG, SNAG] });
  });

  it('names the card whose part broke, was altered, or put the car out', () => {
    const out = { kind: 'out', forDay: false, cause: 'mechanical', words: '' };
    const facts = [
      { ...incident, brokenCardId: CARD },
      { kind: 'modified', cardId: CARD, position: null, words: '' },
      { ...out, cardId: CARD },
    ];
    for (const fact of facts) expect(idsIn([recordFact(fact)]).cards).toEqual([CARD]);
    for (const fact of [incident, { ...out, cardId: null }])
      expect(idsIn([recordFact(fact)]).cards).toEqual([]);
  });

  it('passes when it is of a car, a card and a job of this team and event', () => {
    expect(codeOf(recordFact(incident))).toBeNull();
    expect(codeOf(recordFact(incident, { at: { kind: 'service', serviceId: 'Z' } }))).toBeNull();
    expect(codeOf(recordFact(fitted(CARD)))).toBeNull();
    expect(codeOf(recordFact(madeGood(`${ENTRY}~A~card~${CARD}`)))).toBeNull();
    expect(codeOf(recordFact(madeGood(`${ENTRY}~A~snag~${SNAG}`)), withSnag)).toBeNull();
    expect(codeOf(recordFact(photo(`${ENTRY}~A~card~${CARD}`)))).toBeNull();
    expect(codeOf(recordFact(photo(`${ENTRY}~A~snag~${SNAG}`)), withSnag)).toBeNull();
  });

  it('is refused by name when it is not', () => {
    expect(codeOf(recordFact(incident, { entryId: OTHER }))).toBe('unknownEntry');
    expect(codeOf(recordFact(incident, { factId: OTHER }))).toBe('unknownEntry');
    expect(codeOf(recordFact(fitted(OTHER)))).toBe('unknownTask');
    expect(codeOf(recordFact(madeGood(`${ENTRY}~A~card~${OTHER}`)))).toBe('unknownTask');
    expect(codeOf(recordFact(madeGood(`${OTHER}~A~card~${CARD}`)))).toBe('unknownTask');
    expect(codeOf(recordFact(madeGood(`${ENTRY}~A~snag~${SNAG}`)))).toBe('unknownTask');
    expect(codeOf(recordFact(photo(`${OTHER}~A~card~${CARD}`)))).toBe('unknownTask');
    expect(codeOf(recordFact(photo(`${ENTRY}~A~snag~${SNAG}`)))).toBe('unknownTask');
  });

  it('has a bound on every text and number', () => {
    const tyre = { kind: 'tyre', tyreId: 't', mark: '12', compound: '', place: 'FL' };
    const read = { treadTenths: 300, coldMillibar: 6000, hotMillibar: null };
    expect(codeOf(recordFact({ ...tyre, ...read }))).toBeNull();
    const wrong = [
      { ...tyre, ...read, treadTenths: 301 },
      { ...tyre, ...read, coldMillibar: 6001 },
      { ...tyre, ...read, hotMillibar: 1.5 },
      { ...tyre, ...read, place: 'roof' },
      { ...incident, words: 'x'.repeat(301) },
      { ...incident, code: 'flewAway' },
      madeGood('not a job'),
      madeGood(`${ENTRY}~A~card~nuts`),
      photo(`${ENTRY}~A~card~${CARD}`, { bytes: 1_000_001 }),
      photo(`${ENTRY}~A~card~${CARD}`, { bytes: 0 }),
      photo(`${ENTRY}~A~card~${CARD}`, { sha256: 'A'.repeat(64) }),
    ];
    for (const fact of wrong) {
      const args = { factId: SNAG, entryId: ENTRY, at: { kind: 'road', afterStageId: null }, fact };
      expect(shapeAction(pushed('recordFact', args))).toMatchObject({ ok: false, code: 'malformed' });
    }
  });
});

describe('rulesFor', () => {
  it('asks for a reading once for each place, and once where there is none', () => {
    expect(rulesFor(FACTS, shaped('takeTask', cardTask()))).toEqual({
      needsSignature: true,
      requiredReadings: [
        { readingId: 'pads', position: 'FL' },
        { readingId: 'pads', position: 'FR' },
        { readingId: 'level', position: null },
      ],
      reopens: [`${ENTRY}~A~card~${NUTS}`],
      serviceStands: true,
    });
  });

  it('knows that a service is gone, and that a snag asks for nothing', () => {
    expect(rulesFor(FACTS, shaped('takeTask', cardTask({ serviceId: 'C' })))?.serviceStands).toBe(false);
    expect(rulesFor(FACTS, shaped('takeTask', snagTask))).toMatchObject({
      needsSignature: false,
      requiredReadings: [],
    });
  });

  it('has none for an unknown card, nor for what is about no task', () => {
    const unknownCard = cardTask({ source: { kind: 'card', cardId: OTHER } });
    expect(rulesFor(FACTS, shaped('takeTask', unknownCard))).toBeNull();
    expect(rulesFor(FACTS, shaped('undo', { actionId: CAR }))).toBeNull();
  });
});

describe('refusalOf', () => {
  const codeOf = (action: ReturnType<typeof shaped>, facts = FACTS, slice: WorkState = emptyState) =>
    refusalOf(facts, slice, action)?.code ?? null;
  const confirm = (more: object = {}) =>
    shaped('confirmStage', { entryId: ENTRY, stageId: 'SS1', driven: true, conditions: {}, ...more });

  const record = (more: object = {}) =>
    shaped('recordTime', { entryId: ENTRY, controlId: 'TC1A', writtenAt: 600, heldMinutes: 0, ...more });

  it('lets pass what is of this team and this event', () => {
    expect(codeOf(shaped('takeTask', cardTask()))).toBeNull();
    expect(codeOf(shaped('raiseSnag', snag()))).toBeNull();
    expect(codeOf(confirm())).toBeNull();
    expect(codeOf(record())).toBeNull();
    expect(codeOf(record({ controlId: 'SS1' }))).toBeNull();
    expect(codeOf(record({ controlId: 'SS1', finish: true }))).toBeNull();
    expect(codeOf(shaped('undo', { actionId: OTHER }))).toBeNull();
  });

  it('names what is not', () => {
    expect(codeOf(shaped('takeTask', cardTask(), { by: 'kai' }))).toBe('unknownPerson');
    expect(codeOf(shaped('takeTask', cardTask({ entryId: OTHER })))).toBe('unknownTask');
    expect(codeOf(shaped('takeTask', cardTask({ source: { kind: 'card', cardId: OTHER } })))).toBe(
      'unknownTask',
    );
    expect(codeOf(shaped('raiseSnag', snag({ entryId: OTHER })))).toBe('unknownEntry');
    expect(codeOf(shaped('raiseSnag', snag({ snagId: OTHER })))).toBe('unknownEntry');
    expect(codeOf(confirm({ stageId: 'SS9' }))).toBe('unknownStage');
    expect(codeOf(confirm({ entryId: OTHER }))).toBe('unknownStage');
    expect(codeOf(record({ controlId: 'TC9' }))).toBe('unknownControl');
    expect(codeOf(record({ entryId: OTHER }))).toBe('unknownControl');
    expect(codeOf(record({ controlId: 'SS9', finish: true }))).toBe('unknownControl');
    expect(codeOf(record({ finish: true }))).toBe('unknownControl');
  });

  it('does not take a card of another car of the team', () => {
    const cards = new Map([[CARD, { carId: OTHER, needsSignature: false, readings: [] }]]);
    expect(codeOf(shaped('takeTask', cardTask()), { ...FACTS, cards })).toBe('unknownTask');
  });

  it('finds a snag in the slice alone: also one that was raised a moment before in the same push', () => {
    expect(codeOf(shaped('takeTask', snagTask))).toBe('unknownTask');
    const raised = {
      ...{ id: SNAG, entryId: ENTRY, serviceId: null, place: 'RR', words: 'oil', urgent: false },
      ...{ raisedBy: 'mia', withdrawn: false, changedSeq: 1, changedBy: 'mia' },
    };
    const slice = { ...emptyState, snags: new Map([[SNAG, raised]]) };
    expect(codeOf(shaped('takeTask', snagTask), FACTS, slice)).toBeNull();
  });
});
