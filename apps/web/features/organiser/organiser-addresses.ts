export const organiserAddress = (organiser: string) => `/organiser/?${new URLSearchParams({ organiser })}`;
/** `event` is its id, or `new`. */
export const organiserEventAddress = (organiser: string, event: string) =>
  `/organiser/?${new URLSearchParams({ organiser, event })}`;
/** Who started an event, who stopped, and why. */
export const retirementsAddress = (organiser: string, event: string) =>
  `/organiser/retirements/?${new URLSearchParams({ organiser, event })}`;
/** What keeps failing, over all events. */
export const failingAddress = (organiser: string) =>
  `/organiser/failing/?${new URLSearchParams({ organiser })}`;
/** When the cars of an event came to its controls. */
export const timesAddress = (organiser: string, event: string) =>
  `/organiser/times/?${new URLSearchParams({ organiser, event })}`;
