import { describe, expect, it } from 'vitest';
import { ACTION_KINDS, ACTION_VERSION } from './model';
import { actionOf, close, NUTS, SNAG } from './testing/bay';
import { MIA } from './testing/people';
import { upgradeAction } from './upgrade-action';

const snag = actionOf(SNAG, MIA, 'a1');

describe('upgradeAction', () => {
  it('leaves an action of this version as it is', () => {
    expect(upgradeAction(snag)).toEqual({ ok: true, action: snag });
    const urgent = { ...snag, args: { ...SNAG.args, urgent: true } };
    expect(upgradeAction(urgent)).toEqual({ ok: true, action: urgent });
  });

  it('gives a snag of the version before "not urgent"', () => {
    const { urgent: _, ...args } = SNAG.args;
    expect(upgradeAction({ ...snag, version: ACTION_VERSION - 1, args })).toEqual({ ok: true, action: snag });
  });

  it('takes every other kind of the version before unchanged', () => {
    const closing = actionOf(close(NUTS), MIA, 'a1');
    expect(upgradeAction({ ...closing, version: ACTION_VERSION - 1 })).toEqual({ ok: true, action: closing });
    for (const kind of ACTION_KINDS) expect(upgradeAction({ ...closing, kind, version: 0 }).ok).toBe(true);
  });

  it.each([
    [ACTION_VERSION + 1, 'versionTooNew'],
    [ACTION_VERSION - 2, 'versionTooOld'],
    [0.5, 'versionTooOld'],
    [Number.NaN, 'versionTooOld'],
  ])('refuses version %s', (version, code) => {
    expect(upgradeAction({ ...snag, version })).toEqual({ ok: false, refusal: { code, version } });
  });

  it('refuses a kind it does not know, also one that every object has', () => {
    for (const kind of ['washCar', 'toString', '__proto__']) {
      expect(upgradeAction({ ...snag, kind })).toEqual({ ok: false, refusal: { code: 'unknownKind', kind } });
    }
  });
});
