import { foundTeamAtEvent, ITINERARY } from './event';
import type { House } from './house';

export type Table = typeof ITINERARY;
const NAME = 'Larchwater Stages';

/** A published event, and a team with car 7 that took it over. */
export async function publishAndTakeOver(house: House) {
  const { userId, cookie } = await house.signUp('Organiser');
  const organiser = house.callAs(userId);
  const { organiserId } = await organiser.organiser.create({ name: 'Larchwater Motor Club' });
  const first = { organiserId, publishedEventId: null, name: NAME, itinerary: ITINERARY };
  const saved = await organiser.organiser.saveEvent(first);
  if (!saved.ok) throw new Error('The fixture itinerary has a problem.');
  const own = { organiserId, publishedEventId: saved.publishedEventId };
  await organiser.organiser.publish(own);
  const team = await foundTeamAtEvent(house);
  const { teamId, carId, caller } = team;
  const { eventId } = await caller.event.takeOver({ teamId, ...own });
  const entry = { carNumber: '7', startPosition: 7, people: 2 };
  const { entryId } = await caller.event.enter({ teamId, eventId, carId, ...entry });
  /** Saves it; returns the draft that it became. */
  const draft = async (itinerary: Table) => {
    await organiser.organiser.saveEvent({ ...own, name: NAME, itinerary });
    return (await organiser.bulletin.list(own)).draft;
  };
  const issue = async (itinerary: Table, note = '') => {
    const itineraryNumber = (await draft(itinerary))?.itineraryNumber ?? 0;
    return organiser.bulletin.issue({ ...own, itineraryNumber, note });
  };
  return {
    organiser,
    organiserCookie: cookie,
    own,
    team,
    caller,
    ids: { teamId, eventId },
    entryId,
    draft,
    issue,
  };
}
