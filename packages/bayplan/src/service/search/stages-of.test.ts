import { describe, expect, it } from 'vitest';
import { compileOnStands, shortTask } from '../generate/fixtures';
import { stagesOf } from './stages-of';

const open = { open: ['stands'] };

describe('stagesOf', () => {
  it('places first what must be done with all before it and both ends, then what needs something open', () => {
    const service = compileOnStands(
      shortTask('look'),
      shortTask('nuts', { mandatory: true, after: [{ task: 'look' }] }),
      shortTask('hub', open),
      shortTask('wash'),
    );
    expect([...stagesOf(service)]).toEqual([0, 0, 0, 0, 1, 2]);
  });
});
