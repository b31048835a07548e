import { describe, expect, it } from 'vitest';
import { FakeStorage } from './fixtures';
import { SendTurn } from './send-turn';

describe('SendTurn', () => {
  it('lets one tab send, and the other once it has given way or fallen silent', () => {
    const storage = new FakeStorage();
    let now = 1_000_000;
    const one = new SendTurn(storage, 'turn', 'one', () => now);
    const two = new SendTurn(storage, 'turn', 'two', () => now);
    expect(one.take()).toBe(true);
    expect(one.take()).toBe(true);
    expect(two.take()).toBe(false);
    one.give();
    expect(two.take()).toBe(true);
    two.give();
    one.take();
    now += 25_000;
    expect(two.take()).toBe(true);
  });

  it('does not wait for a turn written before the clock was set back', () => {
    const storage = new FakeStorage();
    let now = 9_000_000;
    const one = new SendTurn(storage, 'turn', 'one', () => now);
    one.take();
    now = 1_000;
    expect(new SendTurn(storage, 'turn', 'two', () => now).take()).toBe(true);
  });
});
