import { cloneDatabase } from '@halfshaft/store/embedded';
import fc from 'fast-check';
import { inject, vi } from 'vitest';
import { type Account, foundTeamAtEvent, joinTeam } from '../../support/event';
import { type House, openHouse } from '../../support/house';
import { startApiProcess } from '../start-process';
import { comeToRest } from './come-to-rest';
import { expectAgreement } from './expect-agreement';
import { Network } from './network';
import { Phone } from './phone';
import { loadPhoneCode, type PhoneCode } from './phone-code';
import { PHONES, type Step, step } from './steps';
import { Traffic } from './traffic';
import { VirtualClock } from './virtual-clock';
import { World } from './world';

const TIMERS = ['setTimeout', 'clearTimeout', 'setInterval', 'clearInterval'] as const;
const NAMES = ['Mia', 'Ida', 'Kai'];

interface Ground {
  house: House;
  url: string;
  codes: readonly PhoneCode[];
  accounts: readonly Account[];
  tally: Tally;
  close(): Promise<void>;
}

/** That much happened at all. */
interface Tally {
  days: number;
  made: number;
  refused: number;
  entries: number;
}

export interface Proof {
  runs: number;
  /** Making a failure shorter ends here too. Fewer runs than asked for by then are a failure. */
  mostMinutes: number;
  /** Left away, other days each time. */
  seed?: number;
}

/**
 * Random days of a few phones against the API's own process and a real PostgreSQL. Prints the seed; a failure is made
 * shorter, and printed with the path that leads to it again: `SWARM_SEED=… SWARM_PATH=…`.
 */
export async function proveSwarm({ runs, mostMinutes, seed: given }: Proof): Promise<void> {
  const ground = await openGround();
  const seed = Number(process.env.SWARM_SEED ?? given ?? Date.now() % 2 ** 31);
  console.info(`${runs} days of ${PHONES} phones, seed ${seed}`);
  const steps = fc.array(step, { minLength: 5, maxLength: 40, size: 'max' });
  const path = process.env.SWARM_PATH ?? '';
  const limit = { interruptAfterTimeLimit: mostMinutes * 60_000, markInterruptAsFailure: true };
  try {
    await fc.assert(
      fc.asyncProperty(steps, (day) => live(ground, day)),
      { numRuns: runs, seed, path, ...limit },
    );
  } finally {
    console.info(inWords(ground.tally));
    await ground.close();
  }
}

/** The same for one day that is known. */
export async function proveDay(day: readonly Step[]): Promise<void> {
  const ground = await openGround();
  try {
    await live(ground, day);
  } finally {
    await ground.close();
  }
}

async function openGround(): Promise<Ground> {
  const house = await openHouse({ database: await cloneDatabase(inject('adminUrl')) });
  const api = await startApiProcess(house.database);
  const accounts = await Promise.all(NAMES.map((name) => house.signUp(name)));
  const codes: PhoneCode[] = [];
  for (let at = 0; at < PHONES; at += 1) codes.push(await loadPhoneCode());
  return {
    ...{ house, url: api.url, codes, accounts, tally: { days: 0, made: 0, refused: 0, entries: 0 } },
    async close() {
      await api.stop();
      await house.close();
      await house.database.drop();
    },
  };
}

function inWords({ days, made, refused, entries }: Tally): string {
  return `${days} days: ${made} actions made, ${refused} of them refused, ${entries} entries in the logs`;
}

async function live(ground: Ground, day: readonly Step[]): Promise<void> {
  vi.useFakeTimers({ toFake: [...TIMERS] });
  const kept = new Set<string>();
  const world = await openWorld(ground, kept);
  try {
    await world.parts.traffic.quiet();
    for (const each of day) await world.run(each);
    await comeToRest(world);
    addTo(ground.tally, await expectAgreement(world, ground.house.database, kept));
  } finally {
    for (const phone of world.parts.phones) await phone.wipe();
    vi.useRealTimers();
  }
}

function addTo(tally: Tally, { made, refused, entries }: Omit<Tally, 'days'>): void {
  tally.days += 1;
  tally.made += made;
  tally.refused += refused;
  tally.entries += entries;
  if (tally.days % 100 === 0) console.info(inWords(tally));
}

async function openWorld({ house, url, codes, accounts }: Ground, kept: Set<string>): Promise<World> {
  const [founder, ...others] = accounts;
  const team = await foundTeamAtEvent(house, 'Swarm', founder);
  const people = [{ ...team, name: 'Swarm Founder' }];
  for (const [at, account] of others.entries()) {
    const name = NAMES[at + 1] ?? '';
    people.push({ ...team, ...(await joinTeam(house, team, name, 'mechanic', account)), name });
  }
  const traffic = new Traffic();
  const clock = new VirtualClock();
  const phones = codes.map((code, at) => {
    const person = people[at % people.length] ?? people[0];
    if (!person) throw new Error('There is nobody.');
    const { teamId, eventId } = team;
    const onKept = (id: string) => void kept.add(id);
    const network = new Network(url, traffic);
    const isSecure = at % 2 === 0;
    const parts = { code, network, traffic, teamId, eventId, isSecure, now: () => clock.now(), onKept };
    return new Phone(parts, person);
  });
  return new World({ team, people, phones, traffic, clock });
}
