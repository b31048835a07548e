import { foundTeamAtEvent, ITINERARY } from './event';
import type { House } from './house';

export type Table = typeof ITINERARY;
const NAME = 'Larchwater Stages';

/** Service B has 12 minutes more and SS5 is cancelled; what follows is 12 and then 9 minutes later. */
export function amended(): Table {
  const rows: [string, string][] = [
    ['TC4B\tService out\t\t\t\t0:20\t11:53', 'TC4B\tService out\t\t\t\t0:32\t12:05'],
    ['24.30\t24.30\t0:36\t12:29', '24.30\t24.30\t0:36\t12:41'],
    ['SS5\tLong Rigg (I)\t16.90\t\t16.90\t\t12:32\n', ''],
    ['12.40\t29.30\t0:38\t13:10', '12.40\t12.40\t0:38\t13:19'],
    ['0:10\t13:20', '0:10\t13:29'],
    ['0:35\t13:55', '0:35\t14:04'],
    ['9.30\t\t9.30\t\t13:58', '9.30\t\t9.30\t\t14:07'],
    ['0:52\t14:50', '0:52\t14:59'],
    ['0:20\t15:10', '0:20\t15:19'],
    ['0:45\t15:55', '0:45\t16:04'],
  ];
  const source = rows.reduce((text, [before, after]) => {
    if (!text.includes(before)) throw new Error(`The fixture itinerary has no row ${before}.`);
    return text.replace(before, after);
  }, ITINERARY.source);
  return { ...ITINERARY, source };
}

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
