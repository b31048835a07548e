import type { DemoApi } from '@halfshaft/api/router';
import type { EventReplica } from '@halfshaft/contract';

export type DemoCaller = DemoApi;

/** How the demo reaches the house: by the same procedures as anyone else, with a clock it may set. */
export interface DemoAccess {
  /** Makes an account and returns its id. */
  signUp(name: string, email: string): Promise<string>;
  /** `at`: the server's clock for these calls, in milliseconds; now when left out. */
  callAs(userId: string, at?: number): DemoCaller;
  /** The day it is in this time zone, `YYYY-MM-DD`. */
  today(timeZone: string): string;
  /** Sets the event's official clock so that the car in this position is in the middle of its second service. */
  setEventClock(home: DemoHome, replica: EventReplica, position: number): Promise<void>;
  newId(): string;
}

export interface DemoHome {
  teamId: string;
  founderUserId: string;
  people: Record<string, { userId: string; personId: string }>;
  cars: Record<string, string>;
}

/** What must be remembered to load the next edition. */
export interface DemoHouse {
  organiser: { organiserId: string; userId: string };
  teams: Record<string, DemoHome>;
}

export interface DemoEdition {
  startsOn: string;
  /** By team. */
  events: Record<string, string>;
}
