import { ACTION_KINDS } from '@halfshaft/worklog';
import { describe, expect, it } from 'vitest';
import { mayRecordFor } from './ability';

describe('mayRecordFor', () => {
  it.each(ACTION_KINDS)('%s: for oneself always; for another, all but a signature', (kind) => {
    expect(mayRecordFor(kind, 'mia', 'mia')).toBe(true);
    expect(mayRecordFor(kind, 'mia', 'scribe')).toBe(kind !== 'signTask');
  });
});
