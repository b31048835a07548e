import { describe, expect, it } from 'vitest';
import { isSameInitials } from './is-same-initials';

describe('isSameInitials', () => {
  it.each(['IF', 'if', ' I. F. '])('takes %j', (typed) => {
    expect(isSameInitials(typed, 'IF')).toBe(true);
  });

  it.each(['', '.', 'I', 'FI', 'IFX'])('does not take %j', (typed) => {
    expect(isSameInitials(typed, 'IF')).toBe(false);
  });

  it('takes nothing for nothing', () => {
    expect(isSameInitials('', '')).toBe(false);
  });
});
