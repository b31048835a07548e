import { describe, expect, it } from 'vitest';
import { Members } from './members';

/** Of two jobs of ten minutes. */
function admitted(...schedules: readonly (readonly [number[], number])[]): string[] {
  const members = new Members();
  for (const [starts, makespan] of schedules) members.admit(Int32Array.from(starts), makespan);
  return members.list.map(({ starts, makespan }) => `${starts.join(' ')} to ${makespan}`);
}

describe('Members', () => {
  it('keeps schedules that are unlike each other', () => {
    expect(admitted([[0, 300], 310], [[300, 5], 310])).toEqual(['0 300 to 310', '300 5 to 310']);
  });

  it('keeps the better of two that are close', () => {
    expect(admitted([[0, 301], 311], [[0, 300], 310])).toEqual(['0 300 to 310']);
    expect(admitted([[0, 300], 310], [[0, 301], 311])).toEqual(['0 300 to 310']);
  });

  it('counts two of the same length with the same sum of starts as one', () => {
    expect(admitted([[0, 300], 310], [[300, 0], 310])).toEqual(['0 300 to 310']);
  });

  it('lets a better one take the place of the worst when it is full, and a worse one not', () => {
    const members = new Members();
    for (let number = 1; !members.full; number += 1) {
      members.admit(Int32Array.of(0, 100 * number), 100 * number + 10);
    }
    const full = members.list.length;
    members.admit(Int32Array.of(0, 100 * full + 500), 100 * full + 510);
    members.admit(Int32Array.of(0, 50), 60);
    const makespans = members.list.map(({ makespan }) => makespan);
    expect(members.list).toHaveLength(full);
    expect(Math.min(...makespans)).toBe(60);
    expect(Math.max(...makespans)).toBe(100 * (full - 1) + 10);
  });

  it('has room for more the more was made', () => {
    const members = new Members();
    const room = () => {
      for (let number = members.list.length + 1; !members.full; number += 1) {
        members.admit(Int32Array.of(0, 100 * number), 100 * number + 10);
      }
      return members.list.length;
    };
    const first = room();
    for (let made = 0; made < 2500; made += 1) members.seenBefore(Int32Array.of(made, 0));
    expect(room()).toBeGreaterThan(first);
  });
});
