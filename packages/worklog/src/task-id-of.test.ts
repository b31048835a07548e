import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { TaskRef } from './model';
import { stageKeyOf } from './stage-key-of';
import { taskIdOf } from './task-id-of';
import { taskRefOf } from './task-ref-of';

const anyId = fc.oneof(fc.stringMatching(/^[A-Za-z0-9:~%-]{0,8}$/), fc.string({ unit: 'binary' }));
const anyRef: fc.Arbitrary<TaskRef> = fc.record({
  entryId: anyId,
  serviceId: anyId,
  source: fc.oneof(
    anyId.map((cardId) => ({ kind: 'card' as const, cardId })),
    anyId.map((snagId) => ({ kind: 'snag' as const, snagId })),
  ),
});

describe('taskIdOf and taskRefOf', () => {
  it('joins the ids, readable', () => {
    const source = { kind: 'card', cardId: 'round:front-left' } as const;
    expect(taskIdOf({ entryId: 'e-7', serviceId: 'B', source })).toBe('e-7~B~card~round:front-left');
  });

  it('gives the reference back, also when ids hold the separator', () => {
    fc.assert(
      fc.property(anyRef, (ref) => {
        expect(taskRefOf(taskIdOf(ref))).toEqual(ref);
      }),
    );
  });

  it('keeps apart what only looks alike', () => {
    const ref = (entryId: string, serviceId: string): TaskRef => ({
      entryId,
      serviceId,
      source: { kind: 'card', cardId: 'c' },
    });
    expect(taskIdOf(ref('a~b', 'c'))).not.toBe(taskIdOf(ref('a', 'b~c')));
    expect(taskIdOf(ref('a%7E', 'c'))).not.toBe(taskIdOf(ref('a~', 'c')));
  });

  it.each(['', 'a~b~card', 'a~b~round~c', 'a~b~card~c~d'])('refuses "%s", which it did not make', (id) => {
    expect(() => taskRefOf(id)).toThrow('taskRefOf');
  });
});

describe('stageKeyOf', () => {
  it('keeps cars and stages apart', () => {
    expect(stageKeyOf({ entryId: 'car7', stageId: 'SS3' })).toBe('car7~SS3');
    const [one, other] = [
      stageKeyOf({ entryId: 'a~b', stageId: 'c' }),
      stageKeyOf({ entryId: 'a', stageId: 'b~c' }),
    ];
    expect(one).not.toBe(other);
  });
});
