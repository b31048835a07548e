import { cardBody } from '@halfshaft/contract';
import { type Drive, type JobCard, type Surface, starterCards } from '@halfshaft/lifing';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { findProblems } from '../events/contract-resolver';
import { type CardForm, NEW_CARD, NEW_READING } from './card-form';
import { cardToForm } from './card-to-form';
import { formToCard } from './form-to-card';
import { placeCardProblem } from './place-card-problem';

const DRIVES: Drive[] = ['front', 'rear', 'four'];
const SURFACES: Surface[] = ['gravel', 'tarmac', 'snow'];
const STARTERS = DRIVES.flatMap((drive) => SURFACES.flatMap((surface) => starterCards(drive, surface)));

const pads: JobCard = {
  id: 'pads',
  starterId: null,
  kind: 'job',
  name: 'Front pads',
  place: 'allCorners',
  fitsNewPart: true,
  intervals: [
    { counter: 'stageMetres', every: 62_500, tolerance: 5000 },
    { counter: 'engineSeconds', every: 9000, tolerance: 0 },
  ],
  dateLimit: { dueAt: Date.UTC(2027, 2, 31) / 1000 },
  conditionFactors: { dust: 1500, water: 900 },
  combineConditions: 'sum',
  seconds: 390,
  people: 2,
  leastServiceSeconds: 1200,
  remoteAllowed: false,
  looks: [],
  readings: [
    {
      id: 'left',
      name: 'Pad left',
      kind: 'wear',
      unit: 'mm',
      decimals: 1,
      positions: ['FL', 'FR'],
      low: 35,
      high: null,
      required: true,
    },
  ],
  needsSignature: true,
  caution: 'Hot.',
  tools: ['torch', 'pad spreader'],
  instruction: 'Bed them in.',
};

const bodyOf = ({ id: _id, ...body }: JobCard) => body;
const problemsOf = (form: CardForm) =>
  findProblems(form, (values) => formToCard(values, null), cardBody, placeCardProblem);

describe('cardToForm', () => {
  it('shows km, hours, minutes and percent', () => {
    expect(cardToForm(pads)).toMatchObject({
      limits: [
        { counter: 'stageMetres', every: '62.5', tolerance: '5' },
        { counter: 'engineSeconds', every: '2.5', tolerance: '0' },
      ],
      minutes: '6.5',
      dueDate: '2027-03-31',
      conditions: { dust: '50', water: '-10', rough: '', night: '', jumps: '' },
      leastServiceMinutes: '20',
      readings: [{ low: '3.5', high: '', positions: 'FL FR' }],
      tools: 'torch\npad spreader',
    });
  });
});

describe('formToCard', () => {
  it('gives back the card the form was filled from', () => {
    expect(formToCard(cardToForm(pads), pads)).toEqual(bodyOf(pads));
  });

  it.each(STARTERS.map((card) => [card.name, card] as const))('gives back the starter card %s', (_, card) => {
    expect(formToCard(cardToForm(card), card)).toEqual(bodyOf(card));
  });

  it('gives back any amount of metres and seconds to the digit', () => {
    const amount = fc.integer({ min: 1, max: 10_000_000 });
    fc.assert(
      fc.property(amount, amount, fc.integer({ min: 30, max: 14_400 }), (metres, running, seconds) => {
        const card: JobCard = {
          ...pads,
          intervals: [
            { counter: 'stageMetres', every: metres, tolerance: running },
            { counter: 'engineSeconds', every: running, tolerance: metres },
          ],
          seconds,
        };
        expect(formToCard(cardToForm(card), card)).toEqual(bodyOf(card));
      }),
    );
  });

  it('takes a decimal comma', () => {
    const form: CardForm = {
      ...NEW_CARD,
      limits: [{ counter: 'stageMetres', every: '62,5', tolerance: '' }],
    };
    expect(formToCard(form, null).intervals).toEqual([
      { counter: 'stageMetres', every: 62_500, tolerance: 0 },
    ]);
  });

  it('sends no looks for a job, whatever stands in the hidden box', () => {
    expect(formToCard({ ...NEW_CARD, looks: 'rims' }, null).looks).toEqual([]);
  });

  it('fits no new part in a round, whatever was ticked before it became one', () => {
    const ticked: CardForm = { ...NEW_CARD, fitsNewPart: true };
    expect(formToCard(ticked, null).fitsNewPart).toBe(true);
    expect(formToCard({ ...ticked, kind: 'round', looks: 'rims' }, null).fitsNewPart).toBe(false);
  });

  it('gives new readings ids of their own', () => {
    const readings = [
      { ...NEW_READING, readingId: 'reading-1', name: 'Tread' },
      { ...NEW_READING, name: 'Pressure' },
      { ...NEW_READING, name: 'Volts' },
    ];
    const ids = formToCard({ ...NEW_CARD, readings }, null).readings.map((reading) => reading.id);
    expect(ids).toEqual(['reading-1', 'reading-2', 'reading-3']);
  });

  it('reads the same whether or not the form was read before', () => {
    const form = structuredClone(NEW_CARD);
    formToCard(form, null);
    expect(form).toEqual(NEW_CARD);
  });
});

describe('placeCardProblem', () => {
  it('has nothing to say of a good card', () => {
    expect(problemsOf(cardToForm(pads))).toEqual([]);
    expect(problemsOf({ ...NEW_CARD, name: 'Walk round' })).toEqual([]);
  });

  it('speaks in the unit typed', () => {
    const form: CardForm = {
      ...NEW_CARD,
      name: '',
      limits: [
        { counter: 'stageMetres', every: 'sixty', tolerance: '-1' },
        { counter: 'services', every: '1.5', tolerance: '0' },
      ],
      minutes: '0',
      leastServiceMinutes: 'x',
      conditions: { ...NEW_CARD.conditions, dust: '900' },
    };
    expect(problemsOf(form)).toEqual([
      { path: 'name', message: 'The name of the card is empty. Type it in.' },
      {
        path: 'limits.0.every',
        message: 'How often must be a number of stage km above 0, such as 60.',
      },
      { path: 'limits.0.tolerance', message: 'The tolerance must be a number of stage km, 0 or more.' },
      {
        path: 'limits.1.every',
        message: 'How often must be a whole number of services above 0, such as 1.',
      },
      {
        path: 'conditions.dust',
        message: 'Type how many percent faster, from −75 to 400, or leave it empty.',
      },
      { path: 'minutes', message: 'The time must be from 0.5 to 240 minutes.' },
      { path: 'leastServiceMinutes', message: 'The shortest service must be from 0 to 600 minutes.' },
    ]);
  });

  it('refuses a reading limit finer than the reading, and limits the wrong way round', () => {
    const finer = { ...NEW_READING, name: 'Tread', decimals: '1', low: '3.55' };
    const swapped = { ...NEW_READING, name: 'Tread', low: '5', high: '3' };
    expect(problemsOf({ ...NEW_CARD, name: 'Tyres', readings: [finer] })).toEqual([
      {
        path: 'readings.0.low',
        message: 'This limit must be a number with at most 1 figure after the point, or empty.',
      },
    ]);
    expect(problemsOf({ ...NEW_CARD, name: 'Tyres', readings: [swapped] })).toEqual([
      { path: 'readings.0.low', message: 'The lower limit is above the upper one. Swap them.' },
    ]);
  });

  it('asks a round for looks, and no card for a limit', () => {
    const paths = problemsOf({ ...NEW_CARD, name: 'Round', kind: 'round', limits: [] }).map(
      ({ path }) => path,
    );
    expect(paths).toEqual(['looks']);
  });

  it('places what the server says of the card', () => {
    const message = 'A tool is longer than 60 characters. Shorten it.';
    expect(placeCardProblem({ path: 'card.tools.1', message }, NEW_CARD)).toEqual({
      path: 'tools',
      message,
    });
  });
});
