import { describe, expect, it } from 'vitest';
import { describeWear, type WearRow } from './wear-bar';

const row: WearRow = {
  id: 'pads',
  label: 'Front pads',
  fromMetres: 70_000,
  toMetres: 190_000,
  limitMetres: 128_000,
  verdict: 'doNow',
};

describe('describeWear', () => {
  it('says where the limit is passed', () => {
    expect(describeWear(row)).toBe('limit passed at km 128.00');
  });

  it('says that it lasts when the limit lies beyond what is needed', () => {
    expect(describeWear({ ...row, limitMetres: 210_000 })).toBe('lasts; limit passed at km 210.00');
  });

  it('says that it lasts to the finish when no limit is passed', () => {
    expect(describeWear({ ...row, limitMetres: null })).toBe('lasts to the finish');
  });

  it("takes the caller's own words", () => {
    expect(describeWear({ ...row, note: 'past since Service A' })).toBe('past since Service A');
  });
});
