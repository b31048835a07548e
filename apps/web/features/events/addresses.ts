/** Where things are. Ids stand in the query string, since every page is one static shell. */
function address(page: string, ids: Record<string, string>): string {
  const query = new URLSearchParams(ids).toString();
  return query === '' ? `/${page}/` : `/${page}/?${query}`;
}

export const carsAddress = (team: string) => address('cars', { team });
export const carAddress = (team: string, car: string) => address('car', { team, car });
/** What keeps failing; without a car, on the one that failed most. */
export const reliabilityAddress = (team: string, car?: string) =>
  address('reliability', car === undefined ? { team } : { team, car });
/** `card` is its id, `new`, or `table` for many at once. */
export const cardAddress = (team: string, car: string, card: string) => address('car', { team, car, card });

/** Where a table of cards is brought in to the car. */
export const cardTableAddress = (team: string, car: string) => cardAddress(team, car, 'table');

/** One's teams with their events. */
export const HOME_ADDRESS = address('home', {});
export const teamAddress = (team: string) => address('home', { team });
export const newEventAddress = (team: string) => address('event/new', { team });
export const eventAddress = (team: string, event: string) => address('event', { team, event });
export const itineraryAddress = (team: string, event: string) => address('event/itinerary', { team, event });
/** What the organiser has issued and the team has not accepted. */
export const bulletinAddress = (team: string, event: string) => address('event/bulletin', { team, event });
export const logAddress = (team: string, event: string) => address('log', { team, event });
export const peopleAddress = (team: string) => address('people', { team });

/** `car` is the car at the event, not the car as such. */
interface Visit {
  team: string;
  event: string;
  car: string;
  at: string;
}
export const serviceAddress = ({ team, event, car, at }: Visit) =>
  address('service', { team, event, car, at });
export const bayAddress = ({ team, event, car, at }: Visit) => address('bay', { team, event, car, at });
/** For a big screen: every car of the team at its service. */
export const boardAddress = (team: string, event: string) => address('board', { team, event });
/** For the crew between two services; `at` is the one they drive to. */
export const roadAddress = ({ team, event, car, at }: Visit) =>
  address('event/road', { team, event, car, at });
/** The sheet by person of one service, to be printed. */
export const sheetAddress = ({ team, event, car, at }: Visit) =>
  address('event/sheet', { team, event, car, at });
/** Where a sheet that was filled in by hand is typed in. */
export const recordSheetAddress = ({ team, event, car, at }: Visit) =>
  address('event/sheet/record', { team, event, car, at });
/** What is left when the event is over. */
export const endAddress = (team: string, event: string) => address('event/end', { team, event });

/** Where an event of another server comes in by its file. */
export const BRING_IN_ADDRESS = address('bring-in', {});

export const tyresAddress = ({ team, event, car, at }: Visit) =>
  address('event/tyres', { team, event, car, at });

/** What was read of the car at each service, and what that leads to expect. */
export const readingsAddress = ({ team, event, car, at }: Visit) =>
  address('event/readings', { team, event, car, at });

/** Sign in, and come back to `next`. */
export const signInAddress = (next: string) => address('sign-in', { next });
