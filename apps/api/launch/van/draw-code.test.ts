import QRCode from 'qrcode';
import { describe, expect, it } from 'vitest';
import { drawCode } from './draw-code';

const LINK = 'http://192.168.4.1:4600/van';
const UPPER = new Set(['█', '▀']);
const LOWER = new Set(['█', '▄']);

/** The drawing read back into rows of 0 and 1. */
function readBack(drawing: string): number[][] {
  return drawing.split('\n').flatMap((line) => {
    const blocks = [...line].filter((each) => ' █▀▄'.includes(each));
    return [UPPER, LOWER].map((half) => blocks.map((each) => Number(half.has(each))));
  });
}

describe('drawCode', () => {
  it('draws every module of the code, with four light ones around it', () => {
    const { modules } = QRCode.create(LINK, { errorCorrectionLevel: 'L' });
    const rows = readBack(drawCode(LINK));
    const inner = rows.slice(4, 4 + modules.size).map((row) => row.slice(4, 4 + modules.size));
    expect(inner.flat()).toEqual([...modules.data].map(Number));
    const darkInAll = rows.flat().filter((each) => each === 1).length;
    expect(darkInAll).toBe(inner.flat().filter((each) => each === 1).length);
    expect(new Set(rows.map((row) => row.length))).toEqual(new Set([modules.size + 8]));
    expect(rows.length).toBeGreaterThanOrEqual(modules.size + 8);
  });

  it('is black on white in a dark terminal too', () => {
    for (const line of drawCode(LINK).split('\n')) {
      expect(line.startsWith('\u001b[47m\u001b[30m')).toBe(true);
      expect(line.endsWith('\u001b[0m')).toBe(true);
    }
  });
});
