import type { ControlPoint, ControlRole, Itinerary, StagePoint } from '@halfshaft/itinerary';
import { servicesOf } from '@halfshaft/itinerary';
import { describe, expect, it } from 'vitest';
import { layoutStrip, SERVICE_GAP } from './strip-layout';

function control(id: string, roles: ControlRole[], roadMetres: number, leg = 1): ControlPoint {
  return {
    kind: 'control',
    id,
    roles,
    roadMetres,
    allowedSeconds: 0,
    leg,
    section: 1,
    name: id,
    firstCarAt: 0,
  };
}

function stage(id: string, stageMetres: number): StagePoint {
  return {
    kind: 'stage',
    id,
    stageMetres,
    gapSeconds: 180,
    repeatOf: null,
    leg: 1,
    section: 1,
    name: id,
    firstCarAt: 0,
  };
}

const itinerary: Itinerary = {
  timeZone: 'UTC',
  roadTimedFrom: 'stageStart',
  points: [
    control('TC0', ['start'], 0),
    control('TC1', ['timeControl'], 10_000),
    stage('SS1', 20_000),
    control('TC1A', ['serviceIn'], 10_000),
    control('TC1B', ['serviceOut'], 0),
    control('TC2', ['timeControl'], 30_000),
    stage('SS2', 10_000),
    control('TC2A', ['finish'], 20_000),
  ],
  startBlocks: [],
};
const services = servicesOf(itinerary);

function layout(width: number, leastPixelsPerKilometre = 2) {
  return layoutStrip({ itinerary, services, fromIndex: 0, toIndex: 7, width, leastPixelsPerKilometre });
}

describe('layoutStrip', () => {
  it('fills the width there is', () => {
    expect(layout(1000).width).toBe(1000);
  });

  it('grows wider than its place rather than become illegible', () => {
    expect(layout(300, 10).width).toBeGreaterThan(1000);
  });

  it('draws each kilometre equally long', () => {
    const { pieces, pixelsPerMetre } = layout(1000);
    const lengths = pieces.map((piece) => Math.round((piece.toX - piece.fromX) / pixelsPerMetre));
    expect(lengths).toEqual([10_000, 20_000, 10_000, 30_000, 10_000, 20_000]);
  });

  it('opens a gap at a service, with the line going on behind it', () => {
    const { gaps, toX } = layout(1000);
    expect(gaps.map((gap) => gap.service?.id)).toEqual(['A']);
    expect(toX(40_000, 'after') - toX(40_000, 'before')).toBe(SERVICE_GAP);
  });

  it('keeps distances outside the drawn part at its ends', () => {
    const { toX, width } = layout(1000);
    expect(toX(-5, 'before')).toBe(toX(0, 'before'));
    expect(toX(900_000, 'after')).toBeLessThanOrEqual(width);
  });

  it('draws a part of the event at its own distances', () => {
    const part = layoutStrip({
      itinerary,
      services,
      fromIndex: 4,
      toIndex: 7,
      width: 600,
      leastPixelsPerKilometre: 1,
    });
    expect([part.fromMetres, part.toMetres]).toEqual([40_000, 100_000]);
    expect(part.gaps).toEqual([]);
    expect(part.stages.map((one) => one.text)).toEqual(['SS2']);
  });

  it('opens a gap where a leg begins', () => {
    const points = itinerary.points.map((point, index) => (index > 4 ? { ...point, leg: 2 } : point));
    const twoLegs = { ...itinerary, points };
    const { gaps } = layoutStrip({
      itinerary: twoLegs,
      services,
      fromIndex: 0,
      toIndex: 7,
      width: 1000,
      leastPixelsPerKilometre: 1,
    });
    expect(gaps.map((gap) => [gap.kind, gap.leg])).toEqual([
      ['service', 1],
      ['leg', 2],
    ]);
  });
});
