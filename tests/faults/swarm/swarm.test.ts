import { it } from 'vitest';
import { KNOWN_DAYS } from './known-days';
import { proveDay, proveSwarm } from './prove-swarm';

// The same days each time, so that a rare fault of old is not met by chance in a change that has no part in it: the long
// form, `swarm.prove.ts`, looks for new ones.
it('phones, server and log agree in the end, whatever happened on the way', async () => {
  await proveSwarm({ runs: 20, mostMinutes: 4, seed: 406_485_476 });
}, 300_000);

for (const { what, steps } of KNOWN_DAYS) {
  it(`agree although ${what}`, () => proveDay(steps));
}
