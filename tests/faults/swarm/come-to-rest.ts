import type { Phone } from './phone';
import type { World } from './world';

const LOOK_EVERY_MILLIS = 5000;
/** Longer than any pause between two tries and any turn to send. */
const MOST_LOOKS = 24;

/** All works again, and whoever has left something on a phone signs in there once more. */
export async function comeToRest(world: World): Promise<void> {
  const { phones, people, traffic } = world.parts;
  for (const phone of phones) {
    phone.network.calm();
    phone.mend();
    await phone.network.deliverLate();
  }
  for (const phone of phones) {
    await waitUntil(world, async () => (await ownersOn(phone)).every((id) => id !== phone.person.personId));
    for (const person of people.toReversed()) {
      if (!(await ownersOn(phone)).includes(person.personId)) continue;
      await phone.passTo(person, true);
      await waitUntil(world, async () => !(await ownersOn(phone)).includes(person.personId));
    }
    const [founder] = people;
    if (founder && phone.person === world.revoked) await phone.passTo(founder, true);
  }
  const { teamId, eventId, caller } = world.parts.team;
  const { lastSeq } = await caller.work.pull({ teamId, eventId, since: 0 });
  for (const phone of phones) {
    phone.retry();
    await waitUntil(world, async () => isUpToDate(phone, lastSeq));
  }
  await traffic.quiet();
}

async function ownersOn(phone: Phone): Promise<string[]> {
  return (await phone.box.readAll()).waiting.map(({ owner }) => owner);
}

function isUpToDate(phone: Phone, lastSeq: number): boolean {
  return phone.tabs.every(({ store }) => {
    const { confirmedSeq, waiting, problem } = store.getSnapshot();
    return confirmedSeq === lastSeq && waiting === 0 && problem === null;
  });
}

async function waitUntil({ parts }: World, isDone: () => Promise<boolean>): Promise<void> {
  for (let looks = 0; looks < MOST_LOOKS; looks += 1) {
    await parts.traffic.quiet();
    if (await isDone()) return;
    await parts.clock.advance(LOOK_EVERY_MILLIS);
  }
  throw new Error(`Phones did not come to rest within ${(MOST_LOOKS * LOOK_EVERY_MILLIS) / 1000} s.`);
}
