import type { ActionId, PersonId, PushedAction } from '@halfshaft/worklog';

/** One team at one event, as `placeOf` writes it. */
export type Place = string;

/** An action the server has not answered, with what must be known of it when nothing else is at hand. */
export interface WaitingAction {
  action: PushedAction;
  place: Place;
  eventName: string;
  /** Who entered it: it is sent under this person's sign-in and nobody else's. */
  owner: PersonId;
  ownerName: string;
  /** What it says, for lists where the event's own names are not known. */
  words: string;
}

/** What a person must be told, until that person has read it. */
export interface WorkNotice {
  id: string;
  place: Place;
  owner: PersonId;
  /** Not taken; kept with something against it; or someone else did something that concerns what this person did. */
  kind: 'refused' | 'kept' | 'told';
  sentence: string;
  /** Null when it was someone else's. */
  action: PushedAction | null;
}

/** What was answered, and what there is to say of it. */
export interface Settled {
  ids: readonly ActionId[];
  notices: readonly WorkNotice[];
}

export function placeOf(teamId: string, eventId: string): Place {
  return `${teamId}.${eventId}`;
}

/** The other way round, for a place read from the device. Null for what is none. */
export function partsOfPlace(place: Place): { teamId: string; eventId: string } | null {
  const [teamId, eventId, ...rest] = place.split('.');
  return teamId && eventId && rest.length === 0 ? { teamId, eventId } : null;
}
