export const organiserAddress = (organiser: string) => `/organiser/?${new URLSearchParams({ organiser })}`;
/** `event` is its id, or `new`. */
export const organiserEventAddress = (organiser: string, event: string) =>
  `/organiser/?${new URLSearchParams({ organiser, event })}`;
