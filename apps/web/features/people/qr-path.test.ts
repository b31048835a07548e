import { create } from 'qrcode';
import { describe, expect, it } from 'vitest';
import { type Modules, qrPath } from './qr-path';

/** Paints the path back into modules. */
function paint(path: string, size: number): number[] {
  const data = new Array<number>(size * size).fill(0);
  for (const [, column, row, length] of path.matchAll(/M(\d+) (\d+)h(\d+)v1h-\3z/g)) {
    for (let step = 0; step < Number(length); step += 1) {
      const at = Number(row) * size + Number(column) + step;
      data[at] = (data[at] ?? 0) + 1;
    }
  }
  return data;
}

describe('qrPath', () => {
  it('draws a run as one bar and leaves light modules out', () => {
    expect(qrPath({ size: 2, data: [1, 1, 0, 1] })).toBe('M0 0h2v1h-2zM1 1h1v1h-1z');
    expect(qrPath({ size: 2, data: [0, 0, 0, 0] })).toBe('');
  });

  it('covers each dark module of a real code once and no other', () => {
    const { modules } = create('https://here.example/join/#abcdefghijklmnopqrstuvwxyz', {
      errorCorrectionLevel: 'M',
    });
    const given: Modules = modules;
    const painted = paint(qrPath(given), given.size);
    expect(painted).toEqual(Array.from(given.data, (module) => (module ? 1 : 0)));
    expect(painted.filter(Boolean).length).toBeGreaterThan(100);
  });
});
