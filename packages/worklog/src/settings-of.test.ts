import { describe, expect, it } from 'vitest';
import type { CarFact } from './car-fact';
import { settingsOf } from './settings-of';
import { AT_START, atService, recorded, THREE_STAGES } from './testing/three-stages';

function change(
  from: string,
  to: string,
  more: Partial<Extract<CarFact, { kind: 'setting' }>> = {},
): CarFact {
  const what = { setting: 'Bump', position: 'FL', askedBy: 'driver' as const, backToBase: false };
  return { kind: 'setting', ...what, from, to, ...more };
}

const ask = (facts: ReturnType<typeof recorded>) => settingsOf(facts, 'car7', THREE_STAGES);

describe('settingsOf', () => {
  it('gives base and current of each setting and place, with every change', () => {
    const [bump, rear] = ask(
      recorded(
        [AT_START, change('12 clicks', '10 clicks')],
        [AT_START, change('14 clicks', '16 clicks', { position: 'RL' })],
        [atService('A'), change('10 clicks', '9 clicks', { askedBy: 'coDriver' })],
      ),
    );
    expect(bump).toMatchObject({ position: 'FL', base: '12 clicks', current: '9 clicks', isAtBase: false });
    expect(bump?.changes.map(({ to, askedBy }) => [to, askedBy])).toEqual([
      ['10 clicks', 'driver'],
      ['9 clicks', 'coDriver'],
    ]);
    expect(rear).toMatchObject({ position: 'RL', base: '14 clicks', current: '16 clicks' });
  });

  it('is at base again after a change back, however it is written', () => {
    const back = change('10 clicks', '12  Clicks', { backToBase: true });
    const [bump] = ask(recorded([AT_START, change('12 clicks', '10 clicks')], [atService('A'), back]));
    expect(bump).toMatchObject({ base: '12 clicks', isAtBase: true });
    expect(bump?.changes).toHaveLength(2);
  });

  it('takes names that differ in capitals and spaces for one setting', () => {
    const settings = ask(
      recorded([AT_START, change('12', '10')], [atService('A'), change('10', '8', { setting: ' bump' })]),
    );
    expect(settings.map(({ setting, current }) => [setting, current])).toEqual([['Bump', '8']]);
  });

  it('knows no base when the first change did not say from what', () => {
    const [bump] = ask(recorded([AT_START, change('', '10 clicks')]));
    expect(bump).toMatchObject({ base: '', current: '10 clicks', isAtBase: false });
  });

  it('puts a change written down late where it belongs, and leaves out what was taken back', () => {
    const facts = recorded(
      [atService('B'), change('9', '8')],
      [AT_START, change('12', '9')],
      [atService('B'), change('8', '1')],
    ).map((each, index) => ({ ...each, withdrawn: index === 2 }));
    expect(ask(facts)).toMatchObject([{ base: '12', current: '8' }]);
    expect(settingsOf(facts, 'car9', THREE_STAGES)).toEqual([]);
  });
});
