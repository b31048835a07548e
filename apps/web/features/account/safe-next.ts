import { HOME_ADDRESS } from '../events/addresses';

/**
 * Where to go on after signing in: only a page of this site, since the address comes from the link that was followed.
 *
 * @example
 * safeNext('//elsewhere.example') // one's own teams
 */
export function safeNext(next: string | null): string {
  if (next === null || !/^\/(?![/\\])[^\\\s]*$/.test(next)) return HOME_ADDRESS;
  // Control characters are dropped by browsers before an address is read, so "/\t/elsewhere" would lead away.
  return [...next].some((letter) => letter < ' ') ? HOME_ADDRESS : next;
}
