/** A whole number made of a text by Fowler, Noll & Vo's hash: the same text always gives the same search. */
export function seedOf(text: string): number {
  let hash = 0x811c9dc5;
  for (let place = 0; place < text.length; place += 1) {
    hash = Math.imul(hash ^ text.charCodeAt(place), 0x01000193);
  }
  return hash >>> 0;
}
