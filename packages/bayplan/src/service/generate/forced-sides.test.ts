import { describe, expect, it } from 'vitest';
import { compileOnStands, shortTask } from './fixtures';
import { EITHER, forcedSides } from './forced-sides';

const open = { open: ['stands'] };
const closed = { closed: ['stands'] };

describe('forcedSides', () => {
  it('puts work on closed things before what is open and waits for it, near or far, and after what it waits for', () => {
    const service = compileOnStands(
      shortTask('roll', closed),
      shortTask('between', { after: [{ task: 'roll' }] }),
      shortTask('hub', { ...open, after: [{ task: 'between' }] }),
      shortTask('nuts', { ...closed, after: [{ task: 'hub' }] }),
      shortTask('wash', closed),
    );
    expect([...forcedSides(service)]).toEqual([EITHER, EITHER, 0, EITHER, EITHER, 1, EITHER]);
  });
});
