import { afterEach, expect, it, vi } from 'vitest';
import { KEPT_FORMS } from '@/lib/keep-typed';
import { closeDraftKey, isBegun } from './is-begun';

const TASK = 'e7~B~card~pads';
afterEach(() => vi.unstubAllGlobals());

function stored(draft: unknown): boolean {
  const key = KEPT_FORMS + closeDraftKey(TASK);
  const getItem = (asked: string) => (asked.endsWith(key) ? JSON.stringify(draft) : null);
  vi.stubGlobal('window', { localStorage: { getItem } });
  return isBegun(TASK);
}

it('is true once something was typed or found, whatever else lies in the storage', () => {
  expect(stored({ typed: { 'pads.FL': '6' }, findings: [] })).toBe(true);
  expect(stored({ typed: {}, findings: [{ words: 'cracked' }] })).toBe(true);
  expect(stored({ typed: { 'pads.FL': '' }, findings: [] })).toBe(false);
  for (const broken of [null, 'text', 7, {}, { findings: 'x' }, { typed: null }])
    expect(stored(broken)).toBe(false);
});
