/** For the beginning of a line: 'Front left' of 'front left'. */
export function capitalise(words: string): string {
  return words.charAt(0).toUpperCase() + words.slice(1);
}
