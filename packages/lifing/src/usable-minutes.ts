import { requireWholeNumber } from './whole-number';

export interface ServiceTime {
  /** From in-control to out-control. */
  allowedSeconds: number;
  people: number;
  /** From the in-control to standing safely on stands with the wheels off. */
  setUpSeconds?: number;
  /** Wheels on, down, torque and walk-round. */
  closeUpSeconds?: number;
  /** How much of a person's time turns into finished work, per mille, until it has been learnt from this team. */
  pacePerMille?: number;
}

export interface UsableTime {
  /** On the clock, between set-up and close-up. */
  clockSeconds: number;
  /** Of all people together, if nobody ever waits or looks for a tool. */
  personSeconds: number;
  /** Of all people together, as it usually turns out. */
  likelyPersonSeconds: number;
}

/** Common practice, no source. */
export const SET_UP_SECONDS = 120;
export const CLOSE_UP_SECONDS = 120;
export const PACE_PER_MILLE = 600;

/**
 * The working time of one service, in whole seconds, cut. Two minutes to settle, two to close up and a pace of 60 %
 * are common practice, no source; a team sets its own.
 *
 * @throws RangeError when an amount is negative or not whole
 * @example
 * usableMinutes({ allowedSeconds: 1200, people: 2 })
 * // { clockSeconds: 960, personSeconds: 1920, likelyPersonSeconds: 1152 }
 */
export function usableMinutes(time: ServiceTime): UsableTime {
  const { allowedSeconds, people } = time;
  const {
    setUpSeconds = SET_UP_SECONDS,
    closeUpSeconds = CLOSE_UP_SECONDS,
    pacePerMille = PACE_PER_MILLE,
  } = time;
  const amounts = { allowedSeconds, people, setUpSeconds, closeUpSeconds, pacePerMille };
  for (const [name, value] of Object.entries(amounts)) requireWholeNumber('usableMinutes', name, value);
  const clockSeconds = Math.max(0, allowedSeconds - setUpSeconds - closeUpSeconds);
  const personSeconds = clockSeconds * people;
  return {
    clockSeconds,
    personSeconds,
    likelyPersonSeconds: Math.floor((personSeconds * pacePerMille) / 1000),
  };
}
