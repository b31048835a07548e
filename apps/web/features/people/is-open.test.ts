import { describe, expect, it } from 'vitest';
import { isOpen } from './is-open';

describe('isOpen', () => {
  it.each([
    [{ revokedAt: null, expiresAt: 1001 }, true],
    [{ revokedAt: null, expiresAt: 1000 }, false],
    [{ revokedAt: 900, expiresAt: 5000 }, false],
  ])('at second 1 says of %j %s', (invite, open) => {
    expect(isOpen(invite, 1)).toBe(open);
  });
});
