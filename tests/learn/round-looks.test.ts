import { adviseLimit } from '@halfshaft/reliability';
import { expect, it } from 'vitest';
import { keepHouse } from '../support/keep-house';
import { BOOTS_ALL as ALL, BOOTS_AT as AT, playBoots } from './split-boots';

const house = keepHouse();

it('knows how long what a round looks at lasts, from where findings say that new ones went on', async () => {
  const { part, look, corner } = await playBoots(house, 'Boots', { newPart: true });
  expect(part).toMatchObject({ name: look.words, roundName: corner.name, renews: false });
  expect(part.failures.map(({ at }) => at)).toEqual([AT.A, AT.D, ALL + AT.A, ALL + AT.B]);
  expect(part.lives.observations).toEqual([
    // Somewhere after the last round that found it whole.
    { kind: 'failedBetween', after: AT.B - AT.A, before: AT.D - AT.A },
    { kind: 'failedBetween', after: AT.F - AT.D, before: ALL - AT.D + AT.A },
    { kind: 'failedBefore', distance: AT.B - AT.A },
    // No further than the last round: a split boot may stay hidden until somebody looks.
    { kind: 'goodAt', distance: AT.F - AT.B },
  ]);
  // The first one, and the one at the other wheel.
  expect(part.lives.leftOut).toMatchObject({ ageUnknown: 2 });
  const advice = adviseLimit(part.lives.observations);
  expect(advice).toMatchObject({ ok: true, fit: { failures: 3, lives: 4 } });
});

it('knows no age of what was found and not said to be changed', async () => {
  const { part } = await playBoots(house, 'Unsaid', {});
  expect(part.failures).toHaveLength(3);
  expect(part.lives.observations).toEqual([]);
});
