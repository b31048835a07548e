import { describe, expect, it } from 'vitest';
import { decodeText } from './decode-text';

describe('decodeText', () => {
  it.each([
    ['UTF-8', [0x31, 0xc3, 0xa9]],
    ['UTF-8 with its mark', [0xef, 0xbb, 0xbf, 0x31, 0xc3, 0xa9]],
    ['UTF-16, low byte first', [0xff, 0xfe, 0x31, 0, 0xe9, 0]],
    ['UTF-16, high byte first', [0xfe, 0xff, 0, 0x31, 0, 0xe9]],
    ['Western Windows', [0x31, 0xe9]],
  ])('reads %s', (_what, bytes) => {
    expect(decodeText(new Uint8Array(bytes))).toBe('1é');
  });
});
