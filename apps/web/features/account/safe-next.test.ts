import { describe, expect, it } from 'vitest';
import { HOME_ADDRESS } from '../events/addresses';
import { safeNext } from './safe-next';

describe('safeNext', () => {
  it.each([HOME_ADDRESS, '/event/?team=1&event=2', '/join/#token', '/people/?team=%2F%2F'])(
    'keeps %s',
    (next) => {
      expect(safeNext(next)).toBe(next);
    },
  );

  it.each([
    null,
    '',
    'home/',
    'https://elsewhere.example/',
    '//elsewhere.example/',
    '/\\elsewhere.example/',
    '/\t/elsewhere.example/',
    '/\n/elsewhere.example/',
    ' //elsewhere.example/',
    'javascript:alert(1)',
    '\\\\elsewhere.example',
    '/\u0000/elsewhere.example',
  ])('goes home for %j', (next) => {
    expect(safeNext(next)).toBe(HOME_ADDRESS);
  });

  it('never leads to another site, whatever a browser makes of the address', () => {
    for (const next of [
      '/a//b',
      '/..//elsewhere.example',
      '/%2F/elsewhere.example',
      '/.//elsewhere.example',
    ]) {
      expect(new URL(safeNext(next), 'https://here.example').origin).toBe('https://here.example');
    }
  });
});
