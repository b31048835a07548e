import { ITINERARY, type TeamAtEvent } from '../../support/event';
import { type Chance, chanceFrom } from '../chance';
import { randomBody, uuidFrom } from '../random-work';
import { FATES } from './network';
import type { Phone, SwarmPerson } from './phone';
import type { Step } from './steps';
import type { Traffic } from './traffic';
import type { VirtualClock } from './virtual-clock';

/** An action that somebody tapped. */
export interface Made {
  actionId: string;
  kind: string;
  owner: string;
  phone: Phone;
  deviceTime: number;
}

export interface WorldParts {
  team: TeamAtEvent;
  /** The first founded the team; the last is the one who may be taken out of it. */
  people: readonly SwarmPerson[];
  phones: readonly Phone[];
  traffic: Traffic;
  clock: VirtualClock;
}

/** The organiser cuts the event short after its first service: stages and services that work is about are gone. */
const SHORT = `${ITINERARY.source.split(/^RZ1/m)[0]}TC3\tFinish Larchwater\t\t17.10\t17.10\t0:28\t10:23\n`;
const VERSIONS = [SHORT, ITINERARY.source];
const HOUR = 3_600_000;

/** Phones, people and an event, and what happens to them. */
export class World {
  readonly made: Made[] = [];
  revoked: SwarmPerson | null = null;
  private versions = 0;

  constructor(readonly parts: WorldParts) {}

  async run({ phone: at, what, pick, settles }: Step): Promise<void> {
    const phone = this.parts.phones[at];
    if (!phone) throw new Error(`There is no phone ${at}.`);
    await this.happen(phone, what, chanceFrom(pick));
    if (settles) await this.parts.traffic.quiet();
  }

  private async happen(phone: Phone, what: Step['what'], chance: Chance): Promise<void> {
    const { clock, team } = this.parts;
    switch (what) {
      case 'act':
        for (let taps = 1 + chance.whole(3); taps > 0; taps -= 1) this.act(phone, chance);
        return;
      case 'secondTab':
        return phone.tabs.length < 2 ? phone.openTab() : undefined;
      case 'crash':
        phone.crash(chance.pick(phone.tabs));
        return phone.tabs.length === 0 ? phone.openTab() : undefined;
      case 'look':
        return chance.pick(phone.tabs).store.lookedAt();
      case 'cut':
        return phone.network.cut();
      case 'mend':
        return phone.network.isCut ? phone.mend() : undefined;
      case 'fate':
        return phone.network.awaits(chance.pick(FATES));
      case 'deliverLate':
        return phone.network.deliverLate();
      case 'pause':
        return clock.advance(chance.whole(3000));
      case 'sleep':
        // Longer than a turn to send lasts, and than a copy of the event is fresh.
        return clock.advance(70_000);
      case 'skew':
        phone.skewMillis += (chance.whole(5) - 2) * HOUR;
        return;
      case 'passOn':
        return phone.passTo(chance.pick(this.parts.people), chance.whole(2) === 0);
      case 'update': {
        const { action, owner } = await phone.update(team.entryId);
        this.made.push({ ...action, owner, phone });
        return;
      }
      case 'revoke':
        return this.revoke();
      case 'itinerary':
        return this.saveItinerary();
    }
  }

  private act(phone: Phone, chance: Chance): void {
    const { team, people } = this.parts;
    const { store } = chance.pick(phone.tabs);
    const place = { entryId: team.entryId, cardIds: team.cardIds.slice(0, 3), workers: [...people] };
    const body = randomBody(chance, place, this.made.length, (what) => this.idOf(what));
    // Whoever the screen says is signed in: after a change of hands, for a moment still the one before.
    const owner = store.getSnapshot().replica?.me.personId;
    if (owner === undefined) return;
    const by = body.kind === 'signTask' || chance.whole(5) > 0 ? owner : chance.pick(people).personId;
    const deviceTime = phone.now();
    const done = store.act(body.kind, body.args, by);
    if (done.ok) this.made.push({ actionId: done.actionId, kind: body.kind, owner, phone, deviceTime });
    else if (done.sentence === '') throw new Error(`${body.kind} was refused without a word.`);
  }

  private idOf(what: string): string {
    const [, index] = /^action (\d+)$/.exec(what) ?? [];
    const made = index === undefined ? undefined : this.made[Number(index)];
    return made?.actionId ?? uuidFrom(`${this.parts.team.eventId} ${what}`);
  }

  private async revoke(): Promise<void> {
    const { team, people } = this.parts;
    const leaver = people.at(-1);
    if (!leaver || this.revoked) return;
    const { teamId, caller } = team;
    const members = await caller.people.list({ teamId });
    const member = members.find(({ personId }) => personId === leaver.personId)?.membership;
    await caller.people.revoke({ teamId, membershipId: member?.membershipId ?? '' });
    this.revoked = leaver;
  }

  private async saveItinerary(): Promise<void> {
    const { teamId, eventId, caller } = this.parts.team;
    const itinerary = { ...ITINERARY, source: VERSIONS[this.versions % VERSIONS.length] ?? '' };
    this.versions += 1;
    const saved = await caller.event.saveItinerary({ teamId, eventId, itinerary });
    if (!saved.ok) throw new Error(`The version has a problem: ${saved.problems[0]?.message}`);
  }
}
