import { describe, expect, it } from 'vitest';
import { copyName } from './copy-name';

describe('copyName', () => {
  it('keeps a name nobody has', () => expect(copyName('Nuts', ['Oil'])).toBe('Nuts'));
  it('takes the first free number', () => expect(copyName('Nuts', ['Nuts', 'Nuts (2)'])).toBe('Nuts (3)'));
  it('stays as short as a name may be', () => {
    const long = 'n'.repeat(80);
    expect(copyName(long, [long])).toBe(`${'n'.repeat(76)} (2)`);
  });
});
