import { it } from 'vitest';
import { proveSwarm } from './prove-swarm';

it('phones, server and log agree in the end, whatever happened on the way', async () => {
  await proveSwarm({ runs: Number(process.env.SWARM_RUNS ?? 2000), mostMinutes: 180 });
});
