/**
 * Text as it is compared: without case, accents and punctuation.
 *
 * @example
 * foldWords('Out (for good)') // 'out for good'
 */
export function foldWords(text: string): string {
  return text
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .toLowerCase()
    .split(/[^\p{L}\p{N}]+/u)
    .filter((word) => word !== '')
    .join(' ');
}
