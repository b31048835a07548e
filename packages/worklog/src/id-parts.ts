/**
 * Joins ids into one that can be taken apart again. The separator `~` needs no escaping in an address, a file name
 * or a database key; ids normally hold letters, digits, `-` and `:`, and should one hold `~` or `%` it is escaped,
 * so that two different lists never give the same text.
 */
export function joinIds(parts: readonly string[]): string {
  return parts.map((part) => part.replaceAll('%', '%25').replaceAll('~', '%7E')).join('~');
}

/** Takes apart what `joinIds` made. */
export function splitIds(joined: string): string[] {
  return joined.split('~').map((part) => part.replaceAll('%7E', '~').replaceAll('%25', '%'));
}
