import { describe, expect, it } from 'vitest';
import { Arcs } from './arcs';
import { Engine, type Narrowing } from './engine';
import { NO_REASON } from './reasons';

/** Looks at number 0 and counts how often it is asked; lets number 1 be at least as much. */
function follower(): Narrowing & { asked: number } {
  return {
    slots: [0],
    isDue: true,
    asked: 0,
    narrow(engine) {
      this.asked += 1;
      return engine.demand(2, engine.trail.values[0] ?? 0, NO_REASON);
    },
  };
}

function engineWith(narrowing: Narrowing): Engine {
  // Three numbers from 0 to 9.
  return new Engine(Int32Array.from([0, -9, 0, -9, 0, -9]), new Arcs(6), [narrowing]);
}

describe('Engine', () => {
  it('asks a narrowing at first and whenever something it looks at was raised, and not otherwise', () => {
    const narrowing = follower();
    const engine = engineWith(narrowing);
    expect(engine.propagate()).toBe(true);
    expect(narrowing.asked).toBe(1);
    engine.decide(4, 3);
    engine.propagate();
    expect(narrowing.asked).toBe(1);
    engine.decide(0, 5);
    engine.propagate();
    expect(narrowing.asked).toBe(2);
    expect(engine.trail.values[2]).toBe(5);
  });

  it('asks again after going back, for what is decided then', () => {
    const narrowing = follower();
    const engine = engineWith(narrowing);
    engine.propagate();
    engine.decide(0, 5);
    engine.propagate();
    engine.backTo(0);
    expect(engine.trail.values[2]).toBe(0);
    engine.decide(0, 4);
    engine.propagate();
    expect(engine.trail.values[2]).toBe(4);
  });

  it('asks whoever has something new to say at the first level although nothing was raised', () => {
    const narrowing = follower();
    const engine = engineWith(narrowing);
    engine.propagate();
    narrowing.isDue = true;
    engine.propagate();
    expect(narrowing.asked).toBe(2);
  });
});
