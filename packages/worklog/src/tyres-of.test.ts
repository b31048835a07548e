import type { StageRun } from '@halfshaft/itinerary';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type CarFact, type FactPlace, type RecordedFact, TYRE_PLACES, type TyrePlace } from './car-fact';
import { deepFreeze } from './testing/deep-freeze';
import { AT_START, afterStage, atService, recorded, THREE_STAGES } from './testing/three-stages';
import { isOnCar, type TyreQuestion, tyresOf } from './tyres-of';

const SERVICE_B = 6;
const FINISH = 8;

type Measured = Partial<
  Pick<Extract<CarFact, { kind: 'tyre' }>, 'treadTenths' | 'coldMillibar' | 'hotMillibar'>
>;

function tyre(tyreId: string, place: TyrePlace, measured: Measured = {}): CarFact {
  const nothing = { treadTenths: null, coldMillibar: null, hotMillibar: null };
  return {
    kind: 'tyre',
    tyreId,
    mark: tyreId.toUpperCase(),
    compound: 'medium',
    place,
    ...nothing,
    ...measured,
  };
}

const FOUR: [FactPlace, CarFact][] = [
  [AT_START, tyre('t1', 'FL')],
  [AT_START, tyre('t2', 'FR')],
  [AT_START, tyre('t3', 'RL')],
  [AT_START, tyre('t4', 'RR')],
  [AT_START, tyre('t5', 'spare1')],
];

function ask(facts: RecordedFact[], more: Partial<TyreQuestion> = {}) {
  const question = {
    facts,
    entryId: 'car7',
    itinerary: THREE_STAGES,
    runs: new Map(),
    untilIndex: FINISH,
    ...more,
  };
  return new Map(tyresOf(deepFreeze(question)).map((each) => [each.tyreId, each]));
}

const run = (stageId: string, driven: boolean): [string, StageRun] => [
  stageId,
  { stageId, driven, conditions: {} },
];

describe('tyresOf', () => {
  it('gives each tyre the stages driven while it was on the car; a spare gathers none', () => {
    const tyres = ask(recorded(...FOUR));
    expect(tyres.get('t1')).toMatchObject({
      mark: 'T1',
      place: 'FL',
      stages: 3,
      stageMetres: 35_000,
      used: true,
    });
    expect(tyres.get('t5')).toMatchObject({ place: 'spare1', stages: 0, stageMetres: 0, used: true });
  });

  it('counts a change at a service from the next stage, and one on the road after its stage', () => {
    const tyres = ask(
      recorded(
        ...FOUR,
        [atService('A'), tyre('t1', 'spare2')],
        [atService('A'), tyre('t6', 'FL')],
        [afterStage('SS2'), tyre('t6', 'scrapped')],
        [afterStage('SS2'), tyre('t5', 'FL')],
      ),
    );
    expect(tyres.get('t1')).toMatchObject({ stageMetres: 10_000, place: 'spare2' });
    expect(tyres.get('t6')).toMatchObject({ stageMetres: 20_000, place: 'scrapped', used: true });
    expect(tyres.get('t5')).toMatchObject({ stages: 1, stageMetres: 5_000, place: 'FL' });
  });

  it('leaves out stages not driven and those still ahead, and takes in one ahead that was confirmed', () => {
    const runs = new Map([run('SS2', false)]);
    expect(ask(recorded(...FOUR), { runs }).get('t1')).toMatchObject({ stages: 2, stageMetres: 15_000 });
    const untilIndex = 2;
    expect(ask(recorded(...FOUR), { untilIndex }).get('t1')).toMatchObject({
      stages: 1,
      stageMetres: 10_000,
    });
    const ahead = new Map([run('SS2', true)]);
    expect(ask(recorded(...FOUR), { untilIndex, runs: ahead }).get('t1')?.stageMetres).toBe(30_000);
  });

  it('keeps the last value of each kind with where it was measured', () => {
    const tyres = ask(
      recorded(
        [AT_START, tyre('t1', 'FL', { treadTenths: 80, coldMillibar: 1900 })],
        [atService('A'), tyre('t1', 'FL', { hotMillibar: 2210 })],
        [atService('B'), tyre('t1', 'FL', { treadTenths: 62 })],
      ),
    );
    expect(tyres.get('t1')).toMatchObject({
      tread: { value: 62, at: atService('B') },
      cold: { value: 1900, at: AT_START },
      hot: { value: 2210, at: atService('A') },
    });
  });

  it('puts what was recorded late where it belongs', () => {
    const tyres = ask(
      recorded(...FOUR, [atService('B'), tyre('t1', 'scrapped')], [atService('A'), tyre('t1', 'RL')]),
    );
    expect(tyres.get('t1')).toMatchObject({ place: 'scrapped', stageMetres: 35_000 });
    expect(tyres.get('t3')).toMatchObject({ place: 'service', stageMetres: 10_000 });
  });

  it('has one tyre at a place: whichever was there before lies in the service area', () => {
    const tyres = ask(recorded(...FOUR, [atService('A'), tyre('t6', 'FL')]));
    expect(tyres.get('t1')).toMatchObject({ place: 'service', stageMetres: 10_000 });
    expect(tyres.get('t6')).toMatchObject({ place: 'FL', stageMetres: 25_000 });
  });

  it('does not count a new tyre in the service area as used', () => {
    expect(ask(recorded([AT_START, tyre('t9', 'service')])).get('t9')?.used).toBe(false);
  });

  it('leaves out other cars and what was taken back, and keeps a fact of a place the itinerary lost', () => {
    const facts = recorded(
      ...FOUR,
      [atService('A'), tyre('t1', 'scrapped')],
      [atService('Z'), tyre('t2', 'service')],
    );
    const [first, ...rest] = facts.map((each) =>
      each.fact.kind === 'tyre' && each.fact.place === 'scrapped' ? { ...each, withdrawn: true } : each,
    );
    const strange = { ...facts[0], entryId: 'car9', factId: 'x', fact: tyre('t8', 'FR') } as RecordedFact;
    const tyres = ask([...(first ? [first] : []), ...rest, strange]);
    expect(tyres.get('t1')).toMatchObject({ place: 'FL', stageMetres: 35_000 });
    expect(tyres.has('t8')).toBe(false);
    expect(tyres.get('t2')?.place).toBe('service');
  });
});

describe('tyresOf, whatever is changed', () => {
  const place = fc.constantFrom(atService('A'), atService('B'), afterStage('SS1'), afterStage('SS2'));
  const corner = fc.constantFrom<TyrePlace>('FL', 'FR', 'RL', 'RR');
  const fitted = fc.tuple(place, fc.constantFrom('t1', 't2', 't5', 't6', 't7'), corner);

  it('shares out four times the stage metres as long as a corner never stands empty', () => {
    const swaps = fc.array(fc.tuple(place, fc.integer({ min: 6, max: 30 }), corner), { maxLength: 20 });
    fc.assert(
      fc.property(swaps, (changes) => {
        const fresh = changes.map(([at, , onto], index): [FactPlace, CarFact] => [
          at,
          tyre(`new${index}`, onto),
        ]);
        const tyres = [...ask(recorded(...FOUR, ...fresh)).values()];
        const metres = tyres.reduce((sum, each) => sum + each.stageMetres, 0);
        expect(metres).toBe(4 * 35_000);
        expect(tyres.reduce((sum, each) => sum + each.stages, 0)).toBe(4 * 3);
      }),
    );
  });

  it('never has two tyres at one place, nor more metres on a tyre than were driven', () => {
    const moved = fc.tuple(place, fc.constantFrom('t1', 't2', 't5', 't6'), fc.constantFrom(...TYRE_PLACES));
    fc.assert(
      fc.property(fc.array(fc.oneof(fitted, moved), { maxLength: 25 }), (changes) => {
        const facts = changes.map(([at, id, to]): [FactPlace, CarFact] => [at, tyre(id, to)]);
        const tyres = [...ask(recorded(...FOUR, ...facts), { untilIndex: SERVICE_B }).values()];
        const places = tyres.map((each) => each.place).filter(isOnCar);
        expect(new Set(places).size).toBe(places.length);
        for (const each of tyres) expect(each.stageMetres).toBeLessThanOrEqual(35_000);
      }),
    );
  });
});
