/**
 * Whether what was typed are these initials. Dots, spaces and small letters do not matter.
 *
 * @example
 * isSameInitials('i. f.', 'IF') // true
 */
export function isSameInitials(typed: string, initials: string): boolean {
  return bare(typed) !== '' && bare(typed) === bare(initials);
}

function bare(words: string): string {
  return words.normalize('NFC').replace(/[\s.]/g, '').toUpperCase();
}
