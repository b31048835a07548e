import { describe, expect, it } from 'vitest';
import { carriedWear } from './carried-wear';
import { cardWith, deepFreeze, threeLoops } from './fixtures';
import type { LastDone } from './model';

// Three loops of 16 and 8 stage km; 10 km of road to each of the six stages, to the second and third service and to the finish.
const EVENT = threeLoops();
const STAGE_METRES = 72_000;
const ROAD_METRES = 90_000;
const PADS = cardWith({ id: 'pads' });

function knowledge(runs: { stageId: string; driven: boolean; conditions: object }[] = []) {
  const byStage = new Map(runs.map((run) => [run.stageId, run]));
  return { ...EVENT, runs: byStage, plannedConditions: new Map() };
}

const carried = (since: LastDone, runs: Parameters<typeof knowledge>[0] = [], card = PADS) =>
  carriedWear(knowledge(runs), deepFreeze([card]), new Map([[card.id, since]]))[card.id];

describe('carriedWear', () => {
  it('takes along the whole event, and one more event, for a card nobody touched', () => {
    expect(carried({ pointIndex: null, carried: {} })).toMatchObject({
      stages: 6,
      stageMetres: STAGE_METRES,
      totalMetres: STAGE_METRES + ROAD_METRES,
      services: 3,
      events: 1,
    });
  });

  it('adds to what the card had brought along itself', () => {
    const since = { pointIndex: null, carried: { stageMetres: 5_000, stages: 2, events: 4 } };
    expect(carried(since)).toMatchObject({ stageMetres: STAGE_METRES + 5_000, stages: 8, events: 5 });
  });

  it('counts only from where the card was last done', () => {
    const third = EVENT.services[2];
    expect(carried({ pointIndex: third?.inIndex ?? -1, carried: null })).toMatchObject({
      stages: 2,
      stageMetres: 24_000,
      events: 1,
    });
  });

  it('leaves out a stage that was not driven, and multiplies by the conditions of one that was', () => {
    const dusty = cardWith({ id: 'filter', conditionFactors: { dust: 2_000 } });
    const runs = [
      { stageId: 'SS1', driven: false, conditions: {} },
      { stageId: 'SS2', driven: true, conditions: { dust: 1_000 } },
    ];
    const wear = carried({ pointIndex: null, carried: {} }, runs, dusty);
    // SS1 (16 km) fell away; SS2 (8 km) counted twice.
    expect(wear).toMatchObject({ stages: 6, stageMetres: STAGE_METRES - 16_000 + 8_000 });
  });

  it('takes a card it knows nothing of as done just before the event', () => {
    const [known, unknown] = [cardWith({ id: 'known' }), cardWith({ id: 'unknown' })];
    const since = new Map<string, LastDone>([['known', { pointIndex: null, carried: {} }]]);
    const wear = carriedWear(knowledge(), [known, unknown], since);
    expect(wear.unknown).toEqual(wear.known);
    expect(Object.keys(wear)).toEqual(['known', 'unknown']);
  });

  it('says nothing of amounts of zero', () => {
    const last = EVENT.itinerary.points.length - 1;
    expect(carried({ pointIndex: last, carried: null })).toEqual({ events: 1 });
    expect(carriedWear(knowledge(), [], new Map())).toEqual({});
  });
});
