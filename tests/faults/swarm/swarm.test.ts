import { it } from 'vitest';
import { proveSwarm } from './prove-swarm';

// `swarm.prove.ts` is the long form.
it('phones, server and log agree in the end, whatever happened on the way', async () => {
  await proveSwarm({ runs: 20, mostMinutes: 4 });
}, 300_000);
