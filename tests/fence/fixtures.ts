import { DEFAULT_PENALTY_RULES, PENALTY_PRESETS } from '@halfshaft/itinerary';
import { ITINERARY } from '../support/event';
import { type Variant, variant } from './fixture';
import { pushFixtures } from './fixtures-work';
import { CAR, type World } from './world';

const POSITION = { carNumber: '9', startPosition: 9, people: 3 };
const CHANGED_ITINERARY = { ...ITINERARY, startsOn: '2026-06-20' };
const BRITISH = PENALTY_PRESETS[1]?.rules ?? DEFAULT_PENALTY_RULES;
const FOR_MECHANICS = { role: 'mechanic', days: 2 } as const;
const founding = { teamName: 'New team', personName: 'New founder', eventName: 'New event' };
const visit = {
  drive: 'front',
  surface: 'gravel',
  itinerary: ITINERARY,
  people: 2,
  startPosition: 3,
} as const;

/** Every procedure at least once. A procedure that is missing here fails the test by its name. */
export const FIXTURES: Variant[] = [
  variant('team.mine', 'account', () => undefined),
  variant('team.create', 'account', () => ({ name: 'New team', personName: 'New founder' })),
  variant('team.keepVisit', 'account', () => ({ ...founding, visit })),

  variant('people.list', 'member', ({ teamId }) => ({ teamId })),
  variant('people.add', 'manager', ({ teamId }) => ({ teamId, name: 'No Account' })),
  variant('people.setRole', 'admin', ({ teamId, spare }) => ({
    teamId,
    membershipId: spare.membershipId,
    role: 'driver' as const,
  })),
  variant('people.revoke', 'admin', ({ teamId, spare }) => ({ teamId, membershipId: spare.membershipId })),

  variant('password.makeLink', 'admin', async ({ teamId, letInWithPassword }) => ({
    teamId,
    membershipId: await letInWithPassword(),
  })),

  variant('invite.create', 'manager', ({ teamId }) => ({ teamId, ...FOR_MECHANICS, eventId: null }), {
    special: 'for the team',
  }),
  variant('invite.create', 'manager', ({ teamId, eventId }) => ({ teamId, ...FOR_MECHANICS, eventId }), {
    special: 'for one event',
  }),
  variant(
    'invite.create',
    'admin',
    ({ teamId }) => ({ teamId, ...FOR_MECHANICS, role: 'manager' as const, eventId: null }),
    { special: 'of a manager' },
  ),
  variant('invite.list', 'manager', ({ teamId }) => ({ teamId })),
  variant('invite.revoke', 'manager', ({ teamId, inviteId }) => ({ teamId, inviteId })),
  variant('invite.look', 'anyone', ({ token }) => ({ token }), { secrets: ['token'] }),
  variant('invite.accept', 'account', ({ token }) => ({ token, name: 'New helper' }), { secrets: ['token'] }),

  variant('car.list', 'member', ({ teamId }) => ({ teamId })),
  variant('car.create', 'manager', ({ teamId }) => ({ teamId, ...CAR, starterCards: 'small' as const })),
  variant('car.update', 'manager', ({ teamId, carId }) => ({ teamId, carId, ...CAR, name: 'Renamed' })),

  variant('card.list', 'member', ({ teamId, carId }) => ({ teamId, carId })),
  variant('card.save', 'manager', async (world) => ({ ...(await cardOf(world)), cardId: null }), {
    special: 'a new one',
  }),
  variant('card.save', 'manager', cardOf, { special: 'an old one' }),
  variant('card.remove', 'manager', ({ teamId, cardId }) => ({ teamId, cardId })),
  variant('card.importTable', 'manager', (world) => ({ ...tableOf(world), how: 'add' as const }), {
    special: 'adding',
  }),
  variant('card.importTable', 'manager', (world) => ({ ...tableOf(world), how: 'replace' as const }), {
    special: 'replacing',
  }),

  variant('reliability.ofTeam', 'manager', ({ teamId }) => ({ teamId })),

  variant('event.list', 'member', ({ teamId }) => ({ teamId })),
  variant('event.get', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),
  variant('event.create', 'manager', ({ teamId }) => ({ teamId, name: 'New event', itinerary: ITINERARY })),
  variant('event.saveItinerary', 'manager', ({ teamId, eventId }) => ({
    teamId,
    eventId,
    itinerary: CHANGED_ITINERARY,
  })),
  variant('event.enter', 'manager', ({ teamId, eventId, idleCarId }) => ({
    teamId,
    eventId,
    carId: idleCarId,
    ...POSITION,
  })),
  variant('event.updateEntry', 'manager', ({ teamId, entryId }) => ({
    teamId,
    entryId,
    ...POSITION,
    positionsBySection: { 2: 4 },
  })),
  variant('event.setPenalties', 'manager', ({ teamId, eventId }) => ({
    teamId,
    eventId,
    rules: BRITISH,
  })),
  variant('event.setConditions', 'manager', ({ teamId, eventId }) => ({
    teamId,
    eventId,
    conditions: { SS1: { night: 1000 } },
  })),
  variant('event.setClockOffset', 'manager', ({ teamId, eventId }) => ({
    teamId,
    eventId,
    clockOffsetSeconds: 35,
  })),
  variant('event.setTyreAllowance', 'manager', ({ teamId, eventId }) => ({
    teamId,
    eventId,
    tyreAllowance: 8,
  })),
  variant('event.published', 'account', () => undefined),
  variant('event.takeOver', 'manager', ({ teamId, organiser: { organiserId, publishedEventId } }) => ({
    teamId,
    organiserId,
    publishedEventId,
  })),

  variant('bayPlan.propose', 'member', ({ teamId, eventId, entryId, cardId, mechanic }) => ({
    teamId,
    eventId,
    entryId,
    serviceId: 'A',
    workSeconds: 1200,
    personIds: [mechanic.personId],
    work: [{ cardId, mustDo: false }],
  })),

  ...pushFixtures(),
  variant('work.pull', 'member', ({ teamId, eventId }) => ({ teamId, eventId, since: 0 })),

  variant('bringIn.list', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),

  variant('organiser.create', 'account', () => ({ name: 'New club' })),
  variant('organiser.events', 'organiser', ({ organiser: { organiserId } }) => ({ organiserId })),
  variant('organiser.saveEvent', 'organiser', (world) => ({ ...eventOf(world), publishedEventId: null }), {
    special: 'a new one',
  }),
  variant('organiser.saveEvent', 'organiser', eventOf, { special: 'an old one' }),
  variant('bulletin.list', 'organiser', ({ organiser: { organiserId, publishedEventId } }) => ({
    organiserId,
    publishedEventId,
  })),
  variant('bulletin.issue', 'organiser', ({ organiser }) => issueOf(organiser)),
  variant('bulletin.open', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),
  variant('bulletin.accept', 'manager', openBulletinOf),
  variant('startList.list', 'organiser', ({ organiser: { organiserId, publishedEventId } }) => ({
    organiserId,
    publishedEventId,
  })),
  variant('startList.save', 'organiser', ({ organiser: { organiserId, draftId } }) => ({
    organiserId,
    publishedEventId: draftId,
    section: 2,
    source: '7 1',
  })),
  variant('startList.open', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),
  variant('startList.take', 'manager', listedEntryOf),
  variant('share.get', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),
  variant('share.count', 'member', ({ teamId, eventId }) => ({ teamId, eventId })),
  variant('share.choose', 'manager', sharedEventOf),
  variant('share.told', 'organiser', ({ organiser: { organiserId } }) => ({ organiserId })),
  variant('retirement.get', 'organiser', ({ organiser: { organiserId, publishedEventId } }) => ({
    organiserId,
    publishedEventId,
  })),
  variant('retirement.save', 'organiser', listToReplace),
  variant('retirement.figures', 'organiser', ({ organiser: { organiserId } }) => ({
    organiserId,
    className: null,
  })),
  variant('timeList.get', 'organiser', ({ organiser: { organiserId, publishedEventId } }) => ({
    organiserId,
    publishedEventId,
  })),
  variant('timeList.save', 'organiser', timesToReplace),
  variant('timeList.figures', 'organiser', ({ organiser: { organiserId } }) => ({
    organiserId,
    className: null,
  })),
  variant('organiser.publish', 'organiser', ({ organiser: { organiserId, draftId } }) => ({
    organiserId,
    publishedEventId: draftId,
  })),
];

async function cardOf({ owner, teamId, carId, cardId }: World) {
  const cards = await owner.caller.card.list({ teamId, carId });
  const card = cards.find((each) => each.id === cardId);
  if (!card) throw new Error('The card of the fixture is not listed.');
  const { id, ...body } = card;
  return { teamId, carId, cardId: id, card: { ...body, name: 'Renamed' } };
}

/** One card the car has and one it has not. */
function tableOf({ teamId, carId }: World) {
  const text =
    'Name,Place,Every,Minutes\nWheel nuts,all four corners,every service,3\nNew card,boot,2 days,5\n';
  return { teamId, carId, text };
}

/** A world may be asked more than once, so the draft is a new one each time. */
async function issueOf({ caller, organiserId, publishedEventId }: World['organiser']) {
  const draft = { organiserId, publishedEventId, name: 'Event', itinerary: CHANGED_ITINERARY };
  await caller.organiser.saveEvent(draft);
  const itineraryNumber = (await caller.bulletin.list({ organiserId, publishedEventId })).draft
    ?.itineraryNumber;
  if (!itineraryNumber) throw new Error('The version that was just saved is no draft.');
  return { organiserId, publishedEventId, itineraryNumber, note: 'Another day' };
}

/** The published event as the team's own, with a bulletin issued since. */
async function openBulletinOf({ owner, teamId, organiser }: World) {
  const { organiserId, publishedEventId } = organiser;
  const { eventId } = await owner.caller.event.takeOver({ teamId, organiserId, publishedEventId });
  const { number } = await organiser.caller.bulletin.issue(await issueOf(organiser));
  return { teamId, eventId, number };
}

/** A car in the published event as the team's own, elsewhere than the organiser's list says. */
async function listedEntryOf({ owner, teamId, carId, organiser }: World) {
  const { organiserId, publishedEventId } = organiser;
  const { eventId } = await owner.caller.event.takeOver({ teamId, organiserId, publishedEventId });
  const place = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await owner.caller.event.enter({ teamId, eventId, carId, ...place });
  return { teamId, entryId };
}

/** The published event as the team's own, to be shared. */
async function sharedEventOf({ owner, teamId, organiser: { organiserId, publishedEventId } }: World) {
  const { eventId } = await owner.caller.event.takeOver({ teamId, organiserId, publishedEventId });
  return { teamId, eventId, choice: 'totals' as const };
}

/** Another list in place of the one the world has. */
async function listToReplace({ organiser: { caller, organiserId, publishedEventId } }: World) {
  const { saved } = await caller.retirement.get({ organiserId, publishedEventId });
  const source = 'Car,What happened\n7,finished';
  return { organiserId, publishedEventId, source, replaces: saved?.savedAt ?? null };
}

/** Other times in place of those the world has. */
async function timesToReplace({ organiser: { caller, organiserId, publishedEventId } }: World) {
  const { saved } = await caller.timeList.get({ organiserId, publishedEventId });
  const list = { source: 'Car,Control,Minutes late\n7,TC1,3', maxLateMinutes: 20 };
  return { organiserId, publishedEventId, ...list, replaces: saved?.savedAt ?? null };
}

function eventOf({ organiser: { organiserId, draftId } }: World) {
  return { organiserId, publishedEventId: draftId, name: 'Renamed', itinerary: CHANGED_ITINERARY };
}
