/** Words as they are compared: small letters, without signs, single spaces. `'Due  Date:'` and `'due date'` are one. */
export function foldWords(words: string): string {
  return words
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, ' ')
    .trim();
}
