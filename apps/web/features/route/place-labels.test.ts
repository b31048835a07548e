import { describe, expect, it } from 'vitest';
import { placeLabels } from './place-labels';

function stageAt(fromX: number, toX: number, text = 'SS1') {
  return { fromX, toX, text };
}

describe('placeLabels', () => {
  it('keeps labels that have room next to the line', () => {
    const rows = placeLabels([stageAt(0, 40), stageAt(100, 140)], []).map((label) => label.row);
    expect(rows).toEqual([0, 0]);
  });

  it('lifts a label that would touch the one before, and comes down again', () => {
    const rows = placeLabels([stageAt(0, 10), stageAt(15, 25), stageAt(60, 70)], []).map(
      (label) => label.row,
    );
    expect(rows).toEqual([0, 1, 0]);
  });

  it('lifts a label over a box it would stand on', () => {
    const rows = placeLabels([stageAt(90, 100)], [{ fromX: 100, toX: 160 }]).map((label) => label.row);
    expect(rows).toEqual([2]);
  });
});
