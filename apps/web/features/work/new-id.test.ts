import { actionId } from '@halfshaft/contract';
import { describe, expect, it } from 'vitest';
import { newId } from './new-id';

const getRandomValues = (bytes: Uint8Array<ArrayBuffer>) => bytes.fill(0xff);

describe('newId', () => {
  it('takes the browser’s own where there is one', () => {
    expect(newId({ randomUUID: () => 'made by the browser', getRandomValues })).toBe('made by the browser');
  });

  it('makes a version 4 id from random bytes on a page without https', () => {
    const id = newId({ getRandomValues });
    expect(id).toBe('ffffffff-ffff-4fff-bfff-ffffffffffff');
    expect(
      actionId.safeParse(newId({ getRandomValues: (bytes) => crypto.getRandomValues(bytes) })).success,
    ).toBe(true);
  });
});
