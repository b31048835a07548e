import type { ItineraryText } from '@halfshaft/contract';
import { readNumber } from '../events/read-number';

/** An event's name and its itinerary as typed. The same names as in the contract, so that its problems fall in place. */
export interface ItineraryForm {
  name: string;
  itinerary: {
    source: string;
    timeZone: string;
    startsOn: string;
    roadTimedFrom: ItineraryText['roadTimedFrom'];
    startIntervalSeconds: string;
    defaultGapSeconds: string;
    printedFor: ItineraryText['printedFor'];
  };
}

/** Before anything is pasted. `today` is `YYYY-MM-DD`. */
export function newItineraryForm(timeZone: string, today: string): ItineraryForm {
  return {
    name: '',
    itinerary: {
      source: '',
      timeZone,
      startsOn: today,
      roadTimedFrom: 'stageStart',
      startIntervalSeconds: '60',
      defaultGapSeconds: '180',
      printedFor: 'positionOne',
    },
  };
}

/** A saved version, to be changed. */
export function itineraryToForm(name: string, text: ItineraryText): ItineraryForm {
  return {
    name,
    itinerary: {
      ...text,
      startIntervalSeconds: String(text.startIntervalSeconds),
      defaultGapSeconds: String(text.defaultGapSeconds),
      // A phone may hold a version fetched before there was a choice.
      printedFor: text.printedFor ?? 'positionOne',
    },
  };
}

/** What is sent. Text that is no number becomes NaN, which the contract refuses at its field. */
export function formToItinerary({ itinerary }: ItineraryForm): ItineraryText {
  return {
    ...itinerary,
    startIntervalSeconds: readNumber(itinerary.startIntervalSeconds),
    defaultGapSeconds: readNumber(itinerary.defaultGapSeconds),
    // So may a form that was kept on this device.
    printedFor: itinerary.printedFor ?? 'positionOne',
  };
}

/** Whether two forms say the same, in whatever order their fields came. */
export function isSameForm(one: ItineraryForm, other: ItineraryForm): boolean {
  const keys = Object.keys(one.itinerary) as (keyof ItineraryForm['itinerary'])[];
  return one.name === other.name && keys.every((key) => one.itinerary[key] === other.itinerary[key]);
}
