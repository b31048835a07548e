import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { whoseStands } from './whose-stands';

describe('whose words stand for a thing that both servers have', () => {
  it.each([
    ['same', { ours: 'a', theirs: 'a', theySaw: undefined, weSaw: undefined }],
    ['theirs', { ours: undefined, theirs: 'a', theySaw: undefined, weSaw: undefined }],
    ['theirs', { ours: 'a', theirs: 'b', theySaw: 'a', weSaw: undefined }],
    ['ours', { ours: 'b', theirs: 'a', theySaw: 'a', weSaw: undefined }],
    ['ours', { ours: 'b', theirs: 'a', theySaw: undefined, weSaw: 'a' }],
    ['both', { ours: 'b', theirs: 'c', theySaw: 'a', weSaw: 'a' }],
    ['both', { ours: 'b', theirs: 'c', theySaw: undefined, weSaw: undefined }],
  ] as const)('%s: %o', (stands, sides) => {
    expect(whoseStands(sides)).toBe(stands);
  });

  it('never loses a change of one side, however often the two carry', () => {
    type Side = { has: string; saw: string | undefined };
    fc.assert(
      fc.property(fc.array(fc.constantFrom('edit', 'home', 'van'), { maxLength: 20 }), (steps) => {
        const home: Side = { has: 'first', saw: undefined };
        const van: Side = { has: 'first', saw: 'first' };
        for (const [index, step] of steps.entries()) {
          // Only the van edits: whatever it says last must reach home, and home's must never be put in its place.
          if (step === 'edit') van.has = `edit ${index}`;
          else carry(step === 'home' ? van : home, step === 'home' ? home : van);
        }
        const last = van.has;
        carry(home, van);
        expect(van.has).toBe(last);
        carry(van, home);
        expect(home.has).toBe(last);
      }),
    );

    function carry(from: Side, to: Side): void {
      const stands = whoseStands({ ours: to.has, theirs: from.has, theySaw: from.saw, weSaw: to.saw });
      expect(stands).not.toBe('both');
      to.saw = from.has;
      if (stands === 'theirs') to.has = from.has;
    }
  });
});
